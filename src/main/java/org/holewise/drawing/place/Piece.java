package org.holewise.drawing.place;

import org.holewise.drawing.sheet.Area;
import org.holewise.drawing.sheet.Point;
import org.holewise.drawing.symbol.Form;
import org.holewise.drawing.symbol.Turn;
import org.holewise.engine.part.Part;
import org.holewise.engine.part.Pin;

/** One symbol on its way to its place: its form and nets, and where it stands so far. */
public final class Piece {
  final int id;
  private final Part part;
  private final int unit;
  private final Form form;
  private final int[] nets;
  private final double labelWidth;
  private Turn turn = Turn.NONE;
  int x;
  int y;

  Piece(int id, Part part, int unit, Form form, Nets nets, double labelWidth) {
    this.id = id;
    this.part = part;
    this.unit = unit;
    this.form = form;
    this.nets = form.ports().stream().mapToInt(port -> nets.of(part.pin(port.pin()))).toArray();
    this.labelWidth = labelWidth;
  }

  public Part part() {
    return part;
  }

  public int unit() {
    return unit;
  }

  public Form form() {
    return form;
  }

  public Turn turn() {
    return turn;
  }

  void turn(Turn turn) {
    this.turn = turn;
  }

  public Point at() {
    return new Point(x, y);
  }

  /** The net of a port, or none. */
  public Pin pin(int port) {
    return part.pin(form.ports().get(port).pin());
  }

  public int net(int port) {
    return nets[port];
  }

  /** The number of a pin's port; −1 where the form does not show it. */
  int port(String pin) {
    for (int i = 0; i < nets.length; i++) {
      if (form.ports().get(i).pin().equals(pin)) {
        return i;
      }
    }
    return -1;
  }

  public int ports() {
    return nets.length;
  }

  boolean manner(Form.Manner manner) {
    return form.manner() == manner;
  }

  boolean kind(String name) {
    return part.kind().name().equals(name);
  }

  /** Room for its ref and value (px). */
  public int labelRoom() {
    return labelWidth();
  }

  int labelWidth() {
    return (int) Math.ceil(labelWidth);
  }

  boolean on(int net) {
    for (int each : nets) {
      if (each == net) {
        return true;
      }
    }
    return false;
  }

  /** Where a port is as the piece is turned, from its middle. */
  Point offset(int port) {
    return turn.of(form.ports().get(port).at());
  }

  /** Where a port is in the drawing. */
  public Point place(int port) {
    Point offset = offset(port);
    return new Point(x + offset.x(), y + offset.y());
  }

  public Point root(int port) {
    Point offset = turn.of(form.ports().get(port).root());
    return new Point(x + offset.x(), y + offset.y());
  }

  /** What it covers as it is turned, from its middle. */
  Area bodyOffset() {
    return turn.of(form.body());
  }

  public Area body() {
    return bodyOffset().moved(x, y);
  }

  /** The way out of a port: −1, 0 or 1 to the right. */
  public int outX(int port) {
    return Integer.signum(offset(port).x() - turn.of(form.ports().get(port).root()).x());
  }

  /** The way out of a port: −1, 0 or 1 downwards. */
  public int outY(int port) {
    return Integer.signum(offset(port).y() - turn.of(form.ports().get(port).root()).y());
  }
}
