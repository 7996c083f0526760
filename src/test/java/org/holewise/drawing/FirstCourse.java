package org.holewise.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.holewise.drawing.circuit.Schematic;
import org.holewise.engine.exercise.ExerciseDraft;
import org.holewise.engine.exercise.Net;
import org.holewise.engine.part.Fields;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;
import org.holewise.engine.part.Registry;

/**
 * Circuits of first courses, a line each: a name, parts as {@code ref:kind}, a stroke, nets as
 * {@code name=pins}. Values are invented.
 */
public final class FirstCourse {
  private static final String CIRCUITS =
      """
      lamp-loop | B1:battery S1:switch R1:resistor D1:led | a=B1.+,S1.1 b=S1.2,R1.1 c=R1.2,D1.a 0=D1.k,B1.-
      parallel-lamps | B1:battery R1:resistor R2:resistor R3:resistor D1:led D2:led D3:led | s=B1.+,R1.1,R2.1,R3.1 a=R1.2,D1.a b=R2.2,D2.a c=R3.2,D3.a 0=D1.k,D2.k,D3.k,B1.-
      divider-loaded | B1:battery R1:resistor R2:resistor R3:resistor | s=B1.+,R1.1 m=R1.2,R2.1,R3.1 0=R2.2,R3.2,B1.-
      three-in-series | B1:battery R1:resistor R2:resistor R3:resistor R4:resistor | s=B1.+,R1.1 a=R1.2,R2.1 b=R2.2,R3.1,R4.1 0=R3.2,R4.2,B1.-
      wheatstone | B1:battery R1:resistor R2:resistor R3:resistor R4:resistor R5:resistor | s=B1.+,R1.1,R3.1 a=R1.2,R2.1,R5.1 b=R3.2,R4.1,R5.2 0=R2.2,R4.2,B1.-
      ladder | B1:battery R1:resistor R2:resistor R3:resistor R4:resistor R5:resistor R6:resistor | s=B1.+,R1.1 a=R1.2,R2.1,R3.1 b=R3.2,R4.1,R5.1 c=R5.2,R6.1 0=R2.2,R4.2,R6.2,B1.-
      two-batteries | B1:battery B2:battery R1:resistor R2:resistor R3:resistor | a=B1.+,R1.1 b=B2.+,R2.1 m=R1.2,R2.2,R3.1 0=R3.2,B1.-,B2.-
      switched-supply | B1:battery S1:switch R1:resistor D1:led R2:resistor D2:led | b=B1.+,S1.1 s=S1.2,R1.1,R2.1 x=R1.2,D1.a y=R2.2,D2.a 0=D1.k,D2.k,B1.-
      two-way-lamp | B1:battery S1:changeover S2:changeover R1:resistor D1:led | s=B1.+,S1.c a=S1.1,S2.1 b=S1.2,S2.2 c=S2.c,R1.1 d=R1.2,D1.a 0=D1.k,B1.-
      rc-charge | B1:battery S1:button R1:resistor C1:electrolytic R2:resistor | s=B1.+,S1.1 p=S1.2,R1.1 c=R1.2,C1.+,R2.1 0=C1.-,R2.2,B1.-
      low-pass-two | G1:generator R1:resistor R2:resistor C1:capacitor C2:capacitor | in=G1.+,R1.1 a=R1.2,R2.1,C1.1 out=R2.2,C2.1 0=C1.2,C2.2,G1.-
      high-pass | G1:generator C1:capacitor R1:resistor | in=G1.+,C1.1 out=C1.2,R1.1 0=R1.2,G1.-
      series-resonance | G1:generator R1:resistor L1:inductor C1:capacitor | in=G1.+,R1.1 a=R1.2,L1.1 out=L1.2,C1.1 0=C1.2,G1.-
      parallel-resonance | G1:generator R1:resistor L1:inductor C1:capacitor | in=G1.+,R1.1 out=R1.2,L1.1,C1.1 0=C1.2,L1.2,G1.-
      twin-t | G1:generator R1:resistor R2:resistor R3:resistor C1:capacitor C2:capacitor C3:capacitor R4:resistor | in=G1.+,R1.1,C1.1 a=R1.2,R2.1,C3.1 b=C1.2,C2.1,R3.1 out=R2.2,C2.2,R4.1 0=C3.2,R3.2,R4.2,G1.-
      rectifier-half | G1:generator D1:diode C1:electrolytic R1:resistor | in=G1.+,D1.a out=D1.k,C1.+,R1.1 0=C1.-,R1.2,G1.-
      rectifier-bridge | G1:generator D1:diode D2:diode D3:diode D4:diode C1:electrolytic R1:resistor | a=G1.+,D1.a,D3.k b=G1.-,D2.a,D4.k p=D1.k,D2.k,C1.+,R1.1 0=D3.a,D4.a,C1.-,R1.2
      zener | B1:battery R1:resistor D1:zener R2:resistor | s=B1.+,R1.1 z=R1.2,D1.k,R2.1 0=D1.a,R2.2,B1.-
      clipper | G1:generator R1:resistor D1:diode D2:diode | in=G1.+,R1.1 out=R1.2,D1.a,D2.k 0=D1.k,D2.a,G1.-
      npn-switch | B1:battery S1:switch R1:resistor R2:resistor D1:led Q1:npn | s=B1.+,S1.1,R2.1 a=S1.2,R1.1 b=R1.2,Q1.b c=R2.2,D1.a d=D1.k,Q1.c 0=Q1.e,B1.-
      pnp-switch | B1:battery S1:switch R1:resistor R2:resistor R3:resistor D1:led Q1:pnp | s=B1.+,Q1.e,R3.1 b=Q1.b,R1.1,R3.2 a=R1.2,S1.1 c=Q1.c,R2.1 d=R2.2,D1.a 0=D1.k,S1.2,B1.-
      light-switch | B1:battery R1:photoresistor R2:potentiometer R3:resistor R4:resistor D1:led Q1:npn | s=B1.+,R2.2,R4.1 m=R2.1,R1.1,R3.1 b=R3.2,Q1.b c=R4.2,D1.a d=D1.k,Q1.c 0=R1.2,Q1.e,B1.-
      darlington | B1:battery R1:resistor R2:resistor D1:led Q1:npn Q2:npn S1:button | s=B1.+,S1.1,R2.1 p=S1.2,R1.1 b=R1.2,Q1.b e=Q1.e,Q2.b a=R2.2,D1.a c=D1.k,Q1.c,Q2.c 0=Q2.e,B1.-
      common-emitter | B1:battery G1:generator R1:resistor R2:resistor R3:resistor R4:resistor R5:resistor C1:electrolytic C2:electrolytic C3:electrolytic Q1:npn | s=B1.+,R1.1,R3.1 in=G1.+,C1.- b=C1.+,R1.2,R2.1,Q1.b c=R3.2,Q1.c,C2.+ e=Q1.e,R4.1,C3.+ out=C2.-,R5.1 0=R2.2,R4.2,C3.-,R5.2,B1.-,G1.-
      two-stage | B1:battery G1:generator R1:resistor R2:resistor R3:resistor R4:resistor R5:resistor R6:resistor C1:electrolytic C2:electrolytic Q1:npn Q2:npn | s=B1.+,R1.1,R3.1,Q2.c in=G1.+,C1.- b=C1.+,R1.2,R2.1,Q1.b c=R3.2,Q1.c,Q2.b e=Q1.e,R4.1 f=Q2.e,R5.1,C2.+ out=C2.-,R6.1 0=R2.2,R4.2,R5.2,R6.2,B1.-,G1.-
      two-coupled | B1:battery G1:generator R1:resistor R2:resistor R3:resistor R4:resistor R5:resistor R6:resistor R7:resistor R8:resistor C1:capacitor C2:capacitor C3:capacitor Q1:npn Q2:npn R9:resistor | s=B1.+,R1.1,R3.1,R5.1,R7.1 in=G1.+,C1.1 b=C1.2,R1.2,R2.1,Q1.b c=R3.2,Q1.c,C2.1 e=Q1.e,R4.1 f=C2.2,R5.2,R6.1,Q2.b g=R7.2,Q2.c,C3.1 h=Q2.e,R8.1 out=C3.2,R9.1 0=R2.2,R4.2,R6.2,R8.2,R9.2,B1.-,G1.-
      emitter-follower | B1:battery G1:generator R1:resistor R2:resistor R3:resistor C1:capacitor C2:capacitor R4:resistor Q1:npn | s=B1.+,R1.1,Q1.c in=G1.+,C1.1 b=C1.2,R1.2,R2.1,Q1.b e=Q1.e,R3.1,C2.1 out=C2.2,R4.1 0=R2.2,R3.2,R4.2,B1.-,G1.-
      collector-feedback | B1:battery G1:generator R1:resistor R2:resistor C1:capacitor Q1:npn | s=B1.+,R1.1 in=G1.+,C1.1 b=C1.2,R2.1,Q1.b c=R1.2,R2.2,Q1.c 0=Q1.e,B1.-,G1.-
      astable | B1:battery R1:resistor R2:resistor R3:resistor R4:resistor C1:electrolytic C2:electrolytic D1:led D2:led Q1:npn Q2:npn | s=B1.+,R1.1,R2.1,R3.1,R4.1 l=R1.2,D1.a c=D1.k,Q1.c,C1.+ b=R2.2,Q1.b,C2.- d=R3.2,Q2.b,C1.- r=R4.2,D2.a g=D2.k,Q2.c,C2.+ 0=Q1.e,Q2.e,B1.-
      differential-pair | P1:supply2 G1:generator R1:resistor R2:resistor R3:resistor R4:resistor Q1:npn Q2:npn | s=P1.+,R1.1,R2.1 in=G1.+,Q1.b a=R1.2,Q1.c b=R2.2,Q2.c t=Q1.e,Q2.e,R3.1 f=Q2.b,R4.1 n=R3.2,P1.- 0=P1.0,G1.-,R4.2
      current-mirror | B1:battery R1:resistor R2:resistor D1:led Q1:npn Q2:npn | s=B1.+,R1.1,R2.1 m=R1.2,Q1.c,Q1.b,Q2.b a=R2.2,D1.a c=D1.k,Q2.c 0=Q1.e,Q2.e,B1.-
      mosfet-inverter | P1:supply R1:resistor Q1:nmos R2:resistor S1:switch | s=P1.+,R1.1,S1.1 g=S1.2,R2.1,Q1.g d=R1.2,Q1.d 0=R2.2,Q1.s,P1.-
      cmos-inverter | P1:supply Q1:pmos Q2:nmos R1:resistor S1:changeover | s=P1.+,Q1.s,S1.1 g=S1.c,Q1.g,Q2.g d=Q1.d,Q2.d,R1.1 0=Q2.s,R1.2,S1.2,P1.-
      inverting | P1:supply2 G1:generator R1:resistor R2:resistor R3:resistor U1:dual-opamp | t=P1.+,U1.8 n=P1.-,U1.4 in=G1.+,R1.1 m=R1.2,R2.1,U1.2 out=R2.2,U1.1,R3.1 0=P1.0,G1.-,U1.3,R3.2
      non-inverting | P1:supply2 G1:generator R1:resistor R2:resistor U1:dual-opamp | t=P1.+,U1.8 n=P1.-,U1.4 in=G1.+,U1.3 m=R1.1,R2.1,U1.2 out=R2.2,U1.1 0=P1.0,G1.-,R1.2
      follower | B1:battery R1:potentiometer U1:dual-opamp R2:resistor D1:led | s=B1.+,R1.2,U1.8 p=R1.w,U1.3 o=U1.1,U1.2,R2.1 l=R2.2,D1.a 0=B1.-,R1.1,U1.4,D1.k
      summing | P1:supply2 G1:generator B1:battery R1:resistor R2:resistor R3:resistor U1:dual-opamp | t=P1.+,U1.8 n=P1.-,U1.4 a=G1.+,R1.1 b=B1.+,R2.1 m=R1.2,R2.2,R3.1,U1.2 out=R3.2,U1.1 0=P1.0,G1.-,B1.-,U1.3
      integrator | P1:supply2 G1:generator R1:resistor R2:resistor C1:capacitor U1:dual-opamp | t=P1.+,U1.8 n=P1.-,U1.4 in=G1.+,R1.1 m=R1.2,R2.1,C1.1,U1.2 out=R2.2,C1.2,U1.1 0=P1.0,G1.-,U1.3
      sallen-key | P1:supply2 G1:generator R1:resistor R2:resistor C1:capacitor C2:capacitor U1:dual-opamp | t=P1.+,U1.8 n=P1.-,U1.4 in=G1.+,R1.1 a=R1.2,R2.1,C1.1 p=R2.2,C2.1,U1.3 out=U1.1,U1.2,C1.2 0=P1.0,G1.-,C2.2
      multiple-feedback | P1:supply2 G1:generator R1:resistor R2:resistor R3:resistor C1:capacitor C2:capacitor U1:dual-opamp | t=P1.+,U1.8 n=P1.-,U1.4 in=G1.+,R1.1 a=R1.2,R2.1,R3.1,C1.1 m=R3.2,C2.1,U1.2 out=U1.1,R2.2,C2.2 0=P1.0,G1.-,C1.2,U1.3
      two-opamps | P1:supply2 G1:generator R1:resistor R2:resistor R3:resistor R4:resistor U1:dual-opamp | t=P1.+,U1.8 n=P1.-,U1.4 in=G1.+,R1.1 m=R1.2,R2.1,U1.2 x=R2.2,U1.1,R3.1 k=R3.2,R4.1,U1.6 out=R4.2,U1.7 0=P1.0,G1.-,U1.3,U1.5
      difference | P1:supply2 B1:battery B2:battery R1:resistor R2:resistor R3:resistor R4:resistor U1:dual-opamp | t=P1.+,U1.8 n=P1.-,U1.4 a=B1.+,R1.1 b=B2.+,R3.1 m=R1.2,R2.1,U1.2 p=R3.2,R4.1,U1.3 out=R2.2,U1.1 0=P1.0,B1.-,B2.-,R4.2
      schmitt | P1:supply2 G1:generator R1:resistor R2:resistor U1:dual-opamp | t=P1.+,U1.8 n=P1.-,U1.4 in=G1.+,U1.2 p=R1.1,R2.1,U1.3 out=R2.2,U1.1 0=P1.0,G1.-,R1.2
      comparator-lamp | B1:battery R1:photoresistor R2:resistor R3:potentiometer R4:resistor D1:led U1:comparator | s=B1.+,R1.1,R3.2,R4.1,U1.8 a=R1.2,R2.1,U1.3 b=R3.w,U1.2 l=R4.2,D1.a o=D1.k,U1.1 0=R2.2,R3.1,U1.4,B1.-
      relaxation | P1:supply2 R1:resistor R2:resistor R3:resistor C1:capacitor U1:dual-opamp | t=P1.+,U1.8 n=P1.-,U1.4 m=R3.1,C1.1,U1.2 p=R1.1,R2.1,U1.3 out=R2.2,R3.2,U1.1 0=P1.0,R1.2,C1.2
      regulator | B1:battery C1:capacitor U1:regulator C2:electrolytic R1:resistor D1:led | i=B1.+,C1.1,U1.in o=U1.out,C2.+,R1.1 l=R1.2,D1.a 0=B1.-,C1.2,U1.gnd,C2.-,D1.k
      series-regulator | B1:battery R1:resistor D1:zener Q1:npn R2:resistor | s=B1.+,R1.1,Q1.c z=R1.2,D1.k,Q1.b o=Q1.e,R2.1 0=D1.a,R2.2,B1.-
      timer-astable | P1:supply U1:555 R1:resistor R2:resistor C1:capacitor C2:capacitor R3:resistor D1:led | s=P1.+,U1.8,U1.4,R1.1 d=R1.2,R2.1,U1.7 r=R2.2,U1.6,U1.2,C1.1 k=U1.5,C2.1 o=U1.3,R3.1 l=R3.2,D1.a 0=P1.-,U1.1,C1.2,C2.2,D1.k
      timer-once | P1:supply U1:555 R1:resistor R2:resistor S1:button C1:electrolytic C2:capacitor R3:resistor D1:led | s=P1.+,U1.8,U1.4,R1.1,R2.1 t=R2.2,S1.1,U1.2 r=R1.2,U1.6,U1.7,C1.+ k=U1.5,C2.1 o=U1.3,R3.1 l=R3.2,D1.a 0=P1.-,U1.1,C1.-,C2.2,D1.k,S1.2
      gate-lamp | P1:supply U1:7408 S1:switch S2:switch R1:resistor R2:resistor R3:resistor D1:led | s=P1.+,U1.14,S1.1,S2.1 a=S1.2,R1.1,U1.1 b=S2.2,R2.1,U1.2 y=U1.3,R3.1 l=R3.2,D1.a 0=P1.-,U1.7,R1.2,R2.2,D1.k
      latch | P1:supply U1:7400 S1:button S2:button R1:resistor R2:resistor R3:resistor D1:led | s=P1.+,U1.14,R1.1,R2.1 a=S1.1,R1.2,U1.1 b=S2.1,R2.2,U1.5 q=U1.3,U1.4,R3.1 n=U1.6,U1.2 l=R3.2,D1.a 0=P1.-,U1.7,S1.2,S2.2,D1.k
      ring | P1:supply U1:7414 R1:resistor C1:capacitor R2:resistor D1:led | s=P1.+,U1.14 a=U1.1,R1.1,C1.1 y=U1.2,R1.2,U1.3 z=U1.4,R2.1 l=R2.2,D1.a 0=P1.-,U1.7,C1.2,D1.k
      flip-flop | P1:supply U1:7474 S1:button R1:resistor R2:resistor D1:led | s=P1.+,U1.14,U1.1,U1.4,S1.1 c=S1.2,R1.1,U1.3 d=U1.2,U1.6 q=U1.5,R2.1 l=R2.2,D1.a 0=P1.-,U1.7,R1.2,D1.k
      counter-display | P1:supply S1:button R9:resistor C1:capacitor U1:74161 U2:4511 U3:seven-segment R1:resistor R2:resistor R3:resistor R4:resistor R5:resistor R6:resistor R7:resistor | s=P1.+,S1.1,U1.16,U1.1,U1.7,U1.9,U1.10,U2.16,U2.3,U2.4,C1.1 k=S1.2,R9.1,U1.2 q0=U1.14,U2.7 q1=U1.13,U2.1 q2=U1.12,U2.2 q3=U1.11,U2.6 a=U2.13,R1.1 b=U2.12,R2.1 c=U2.11,R3.1 d=U2.10,R4.1 e=U2.9,R5.1 f=U2.15,R6.1 g=U2.14,R7.1 sa=R1.2,U3.7 sb=R2.2,U3.6 sc=R3.2,U3.4 sd=R4.2,U3.2 se=R5.2,U3.1 sf=R6.2,U3.9 sg=R7.2,U3.10 0=P1.-,R9.2,U1.8,U2.8,U2.5,U3.3,C1.2
      chaser | P1:supply U1:555 R1:resistor R2:resistor C1:capacitor U2:4017 R3:resistor R4:resistor R5:resistor D1:led D2:led D3:led | s=P1.+,U1.8,U1.4,R1.1,U2.16 d=R1.2,R2.1,U1.7 r=R2.2,U1.6,U1.2,C1.1 k=U1.3,U2.14 a=U2.3,R3.1 b=U2.2,R4.1 c=U2.4,R5.1 x=R3.2,D1.a y=R4.2,D2.a z=R5.2,D3.a w=U2.7,U2.15 0=P1.-,U1.1,C1.2,U2.8,U2.13,D1.k,D2.k,D3.k
      shift-register | P1:supply S1:button S2:switch R1:resistor R2:resistor U1:74164 R3:resistor R4:resistor R5:resistor R6:resistor D1:led D2:led D3:led D4:led | s=P1.+,S1.1,S2.1,U1.14,U1.9 k=S1.2,R1.1,U1.8 d=S2.2,R2.1,U1.1,U1.2 a=U1.3,R3.1 b=U1.4,R4.1 c=U1.5,R5.1 e=U1.6,R6.1 w=R3.2,D1.a x=R4.2,D2.a y=R5.2,D3.a z=R6.2,D4.a 0=P1.-,R1.2,R2.2,U1.7,D1.k,D2.k,D3.k,D4.k
      """;

  private static final Fields PAIR =
      ExerciseDraft.fields(
          "outputs",
          List.of(
              ExerciseDraft.fields("plus", "+", "minus", "0", "volts", 12),
              ExerciseDraft.fields("plus", "0", "minus", "-", "volts", 12)));

  private FirstCourse() {}

  /** All by name. */
  public static Map<String, Schematic> all() {
    var all = new LinkedHashMap<String, Schematic>();
    CIRCUITS
        .lines()
        .filter(line -> !line.isBlank())
        .forEach(
            line -> {
              String[] of = line.split(" \\| ");
              all.put(of[0].strip(), schematic(of[1], of[2]));
            });
    return all;
  }

  private static Schematic schematic(String parts, String nets) {
    var made = new ArrayList<Part>();
    for (String part : parts.strip().split(" ")) {
      String[] of = part.split(":");
      made.add(part(of[0], of[1]));
    }
    var joined = new ArrayList<Net>();
    for (String net : nets.strip().split(" ")) {
      String[] of = net.split("=");
      joined.add(
          new Net(of[0], Stream.of(of[1].split(",")).map(p -> Pin.read(p).orElseThrow()).toList()));
    }
    return new Schematic(made, joined, Map.of());
  }

  /** A part of that kind with a value that its number stands for. */
  static Part part(String ref, String kind) {
    boolean pair = kind.equals("supply2");
    var known = Registry.kind(pair ? "supply" : kind).orElseThrow();
    return new Part(ref, known, pair ? PAIR : value(kind));
  }

  private static Fields value(String kind) {
    return switch (kind) {
      case "resistor" -> ExerciseDraft.fields("ohms", 4.7e3);
      case "photoresistor", "thermistor", "potentiometer" -> ExerciseDraft.fields("ohms", 10e3);
      case "capacitor" -> ExerciseDraft.fields("farads", 100e-9);
      case "electrolytic" -> ExerciseDraft.fields("farads", 10e-6);
      case "inductor" -> ExerciseDraft.fields("henries", 10e-3);
      case "battery" -> ExerciseDraft.fields("volts", 9);
      case "supply", "regulator" -> ExerciseDraft.fields("volts", 5);
      case "generator" -> ExerciseDraft.fields("volts", 1, "hertz", 1000);
      case "zener" -> ExerciseDraft.fields("breakdown", ExerciseDraft.fields("volts", 5.1));
      default -> Fields.NONE;
    };
  }
}
