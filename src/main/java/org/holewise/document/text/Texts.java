package org.holewise.document.text;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.holewise.engine.board.Build;
import org.holewise.engine.board.Finding;
import org.holewise.engine.board.Hole;
import org.holewise.engine.diagnosis.Act;
import org.holewise.engine.diagnosis.NextReading;
import org.holewise.engine.diagnosis.Place;
import org.holewise.engine.diagnosis.Suspect;
import org.holewise.engine.exercise.Exercise;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.marking.Caution;
import org.holewise.engine.quantity.Display;
import org.holewise.engine.quantity.Parsed;
import org.holewise.engine.reading.Judged;
import org.holewise.engine.reading.Verdict;
import org.holewise.engine.wiring.Repair;

/**
 * Everything that a mark says, in words: place before reason before act. A student's sentence names
 * no limit, expected value or likelihood; a teacher's may. Immutable.
 */
public final class Texts {
  /** More places than these that look the same would only confuse. */
  private static final int MOST_ALIKE = 3;

  private static final double LIKELY = 0.5;

  private final Messages messages;
  private final Names names;
  private final RepairTexts repairs;
  private final MeasureTexts measures;
  private final EvidenceTexts evidence;
  private final boolean forTeacher;
  private final boolean recorded;

  /**
   * @param build the layout as entered, from which leads get their holes
   * @param forTeacher whether a sentence may give away what a part really is
   */
  public Texts(Messages messages, Exercise exercise, Optional<Build> build, boolean forTeacher) {
    this.messages = messages;
    this.names = new Names(messages, exercise, build);
    this.repairs = new RepairTexts(messages, names);
    this.measures = new MeasureTexts(messages, names, exercise);
    this.evidence = new EvidenceTexts(messages, names, forTeacher);
    this.forTeacher = forTeacher;
    this.recorded = build.isPresent();
  }

  public String finding(Finding finding) {
    Object[] parts = finding.parts().stream().map(names::written).toArray();
    return messages.say("finding." + finding.kind(), parts);
  }

  public String repair(Repair repair) {
    return repairs.of(repair);
  }

  /** The word for a verdict. */
  public String verdict(Verdict verdict) {
    return messages.say("verdict." + verdict.key());
  }

  /** What to do about a reading; empty where it fits. */
  public Optional<String> reading(Judged judged) {
    if (judged.verdict() == Verdict.WITHIN) {
      return Optional.empty();
    }
    return judged.unreadable().isPresent()
        ? Optional.of(unreadable(judged.unreadable().get()))
        : messages.find("reading." + judged.verdict().key());
  }

  public String unreadable(Parsed.Why why) {
    return messages.say("unreadable." + why.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  /** The likeliest fault at a place, and which of the others look the same. */
  public String suspect(Suspect suspect, List<Suspect> all) {
    List<String> alike =
        suspect.alike().stream()
            .limit(MOST_ALIKE)
            .map(all::get)
            .map(other -> names.place(other.place()))
            .filter(name -> !name.isEmpty())
            .toList();
    return alike.isEmpty()
        ? suspect(suspect)
        : messages.say("suspect.alike", suspect(suspect), names.all(alike));
  }

  /** The likeliest fault at a place: where, what the readings say, what to do. */
  public String suspect(Suspect suspect) {
    Suspect.Guess guess = suspect.likeliest();
    String key = "suspect." + guess.kind() + where(suspect.place());
    String place = names.place(suspect.place());
    String shows = evidence.of(suspect.evidence());
    if (suspect.place() instanceof Place.Nowhere && suspect.probability() < LIKELY) {
      return messages.say("suspect.none.perhaps");
    }
    if (!recorded && messages.has(key + ".unrecorded")) {
      return messages.say(key + ".unrecorded", place, "", shows);
    }
    if (messages.has(key + "." + guess.how())) {
      return messages.say(key + "." + guess.how(), place, "", shows);
    }
    if (forTeacher && Double.isFinite(guess.value()) && messages.has(key + ".about")) {
      String value = Display.value(guess.value(), guess.unit());
      return messages.say(key + ".about", place, value, shows);
    }
    return said("suspect.other", key, place, guess.holes(), shows);
  }

  public String next(NextReading next) {
    return measures.of(next);
  }

  /** How to take a reading that was asked for, in the usual condition. */
  public String asked(Measure measure) {
    return measures.asked(measure);
  }

  /** How to take a reading, whatever its condition. */
  public String how(Measure measure) {
    return measures.of(measure);
  }

  public String act(Act act) {
    String key = "act." + act.kind() + where(act.place());
    return said("act.look-at", key, names.place(act.place()), act.holes(), "");
  }

  public String caution(Caution caution) {
    String key = "caution." + caution.kind();
    boolean whole = caution.ref().isEmpty() && messages.has(key + ".build");
    return messages.say(whole ? key + ".build" : key, caution.parts().toArray());
  }

  /** The sentence of a key, the one with holes where there are any; else a plain one. */
  private String said(String otherwise, String key, String place, List<Hole> holes, String shows) {
    boolean in = !holes.isEmpty() && messages.has(key + ".in");
    String known = messages.has(key) ? key : otherwise;
    String all = holes.isEmpty() ? "" : names.all(holes);
    return messages.say(in ? key + ".in" : known, place, all, shows);
  }

  private static String where(Place place) {
    if (place instanceof Place.OfLead) {
      return ".lead";
    }
    if (place instanceof Place.OfLink) {
      return ".link";
    }
    if (place instanceof Place.OfPart) {
      return ".part";
    }
    if (place instanceof Place.OfRail) {
      return ".rail";
    }
    if (place instanceof Place.OfStrips) {
      return ".strips";
    }
    if (place instanceof Place.OfSupply) {
      return ".supply";
    }
    if (place instanceof Place.OfParts) {
      return ".parts";
    }
    if (place instanceof Place.OfReadings) {
      return ".readings";
    }
    return place instanceof Place.OfReading ? ".reading" : "";
  }
}
