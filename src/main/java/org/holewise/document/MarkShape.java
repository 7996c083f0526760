package org.holewise.document;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.holewise.document.shape.AnyShape;
import org.holewise.document.shape.ChoiceShape;
import org.holewise.document.shape.FlagShape;
import org.holewise.document.shape.ListShape;
import org.holewise.document.shape.Member;
import org.holewise.document.shape.NumberShape;
import org.holewise.document.shape.RecordShape;
import org.holewise.document.shape.Shape;
import org.holewise.engine.diagnosis.Evidence;
import org.holewise.engine.exercise.Measure;
import org.holewise.engine.reading.Verdict;

/** The members of a mark in the teacher's view; only its schema is used. */
final class MarkShape {
  private static final AnyShape TEXT = AnyShape.text();
  private static final AnyShape NUMBER = AnyShape.number();
  private static final NumberShape COUNT = new NumberShape(0, 10_000, true);
  private static final NumberShape SHARE = new NumberShape(0, 1, false);
  private static final Shape<?> HOLES = list(Words.ITS_HOLE);
  private static final Shape<?> SHOWN = AnyShape.quantity();

  static final RecordShape WHOLE =
      RecordShape.of(
          List.of(
              must("engine", TEXT, "Version of the engine."),
              must("priors", TEXT, "Name of the table of priors."),
              must("findings", list(finding()), "What is impossible or odd, in document order."),
              must("wiring", wiring(), "How the wiring compares with the schematic."),
              must("readings", list(reading()), "The exercise's readings, judged as built."),
              must("suspects", list(suspect()), "Places of a fault, likeliest first."),
              may("next", next(), "The reading that tells most, where one does."),
              must("try", list(act()), "Acts that test or mend, quickest first."),
              must("cautions", list(caution()), "What can hurt a part or a person."),
              must("marks", marks(), "Marks earned.")));

  private MarkShape() {}

  private static RecordShape finding() {
    return RecordShape.of(
        List.of(
            must("at", TEXT, "JSON pointer into the request."),
            must("kind", TEXT, "Its key."),
            must("text", TEXT, "Its sentence.")));
  }

  private static RecordShape wiring() {
    return RecordShape.of(
        List.of(
            must("matches", new FlagShape(), "Whether there is nothing to repair."),
            must("score", SHARE, "max(0, 1 - cost / leads of the schematic)."),
            must("differences", list(difference()), "The smallest set of repairs.")));
  }

  private static RecordShape difference() {
    List<Member<?>> members = new ArrayList<>(repair());
    members.add(must("or", list(repairs(repair())), "Other repairs of the same size."));
    return repairs(members);
  }

  private static RecordShape repairs(List<Member<?>> members) {
    return new RecordShape(members, List.of("ref", "link", "add", "remove", "place"), List.of());
  }

  private static List<Member<?>> repair() {
    return List.of(
        may("ref", TEXT, "Part whose lead is to be moved.").beside("pin"),
        may("pin", TEXT, "The lead.").beside("ref"),
        may("link", COUNT, "Link of which an end is to be moved.").beside("end"),
        may("end", new NumberShape(0, 1, true), "The end.").beside("link"),
        may("add", new ListShape<>(HOLES, 2, 2, false), "Holes for a new link, a list an end."),
        may("remove", COUNT, "Link to be taken out."),
        may("place", TEXT, "Part to be placed."),
        may("hole", Words.ITS_HOLE, "Where it is now."),
        may("holes", HOLES, "The ends of the link to be taken out."),
        may("net", TEXT, "Net it belongs to; left out where it should touch nothing."),
        may("joins", TEXT, "Net that it touches now."),
        may("move", HOLES, "Free holes where it would be right, nearest first."),
        must("text", TEXT, "Its sentence."));
  }

  private static RecordShape reading() {
    return RecordShape.of(
        List.of(
            must("id", TEXT, "Id of the exercise's reading."),
            may("measured", SHOWN, "What was read: SI units, a word, or OL."),
            may(
                "unit",
                new ChoiceShape(List.of("V", "A", "Ω", "dB", "Hz")),
                "SI unit; left out for a word."),
            may("expected", SHOWN, "What the schematic's circuit gives."),
            may("low", NUMBER, "Lower end of the 95 % band."),
            may("high", NUMBER, "Upper end of the band."),
            may("floating", new FlagShape(), "Whether it hangs on an unconnected net."),
            may("worst", pair(NUMBER), "Least and most that limits allow, meter apart."),
            may("asBuilt", asBuilt(), "What the circuit as built gives."),
            must("verdict", new ChoiceShape(verdicts()), "What became of it."),
            may("text", TEXT, "What to do about it, unless it fits.")));
  }

  private static RecordShape asBuilt() {
    return RecordShape.of(
        List.of(
            must("expected", SHOWN, "Value or word."),
            may("low", NUMBER, "Lower end of the 95 % band."),
            may("high", NUMBER, "Upper end of the band."),
            may("floating", new FlagShape(), "Whether it hangs on an unconnected net.")));
  }

  private static List<String> verdicts() {
    return List.of(Verdict.values()).stream().map(Verdict::key).toList();
  }

  private static RecordShape suspect() {
    List<Member<?>> members = new ArrayList<>(where());
    members.add(0, must("kind", TEXT, "The likeliest kind of fault there."));
    members.addAll(what());
    members.add(must("probability", SHARE, "Of the place."));
    members.add(must("kinds", list(kind()), "All kinds of fault there, likeliest first."));
    members.add(must("alike", list(COUNT), "Positions of places that look the same."));
    members.add(may("speaks", new ChoiceShape(bearings()), "How the readings bear on it."));
    members.add(may("evidence", list(sign()), "Readings that speak for it.").beside("speaks"));
    members.add(must("text", TEXT, "Its sentence."));
    return RecordShape.of(members);
  }

  private static RecordShape sign() {
    return RecordShape.of(
        List.of(
            must("reading", TEXT, "Its id."),
            must("reads", new ChoiceShape(reads()), "Which way it is off."),
            may("beside", new FlagShape(), "True where it is off beside the other readings only."),
            must("measured", SHOWN, "What was read."),
            may("expected", SHOWN, "What the circuit as entered gives."),
            may("unit", TEXT, "SI unit; left out for a word.")));
  }

  private static List<String> bearings() {
    return Stream.of(Evidence.Bearing.values())
        .filter(bearing -> bearing != Evidence.Bearing.NONE)
        .map(Evidence.Bearing::key)
        .toList();
  }

  private static List<String> reads() {
    return Stream.of(Evidence.Reads.values()).map(Evidence.Reads::key).toList();
  }

  private static RecordShape kind() {
    List<Member<?>> members = new ArrayList<>();
    members.add(must("kind", TEXT, "Kind of fault."));
    members.add(may("holes", HOLES, "Where it probably is."));
    members.addAll(what());
    members.add(must("probability", SHARE, "Of this kind at this place."));
    return RecordShape.of(members);
  }

  private static List<Member<?>> what() {
    return List.of(
        may("value", NUMBER, "What a part probably is (SI)."),
        may("unit", TEXT, "The unit of value; Ω where left out."),
        may("how", TEXT, "How a part is dead: open or short."),
        may("order", list(TEXT), "What each pin really is, in the order of the pins."));
  }

  private static List<Member<?>> where() {
    return List.of(
        may("ref", TEXT, "A part or a source; with pin, one of its leads."),
        may("pin", TEXT, "The lead.").beside("ref"),
        may("refs", list(TEXT), "Two parts that may have traded places."),
        may("readings", list(TEXT), "Two readings that may have been exchanged."),
        may("link", COUNT, "Index in links."),
        may("reading", TEXT, "Id of a reading."),
        may("holes", HOLES, "Where it probably is, or the strips concerned."));
  }

  private static RecordShape next() {
    List<Member<?>> members = new ArrayList<>(Measures.ANYWHERE.members());
    members.remove(Measures.WHEN);
    members.add(must("when", TEXT, "Name of the condition."));
    members.add(must("gain", NUMBER, "Expected fall of entropy over places (bit)."));
    members.add(must("text", TEXT, "Its sentence."));
    return new RecordShape(members, Measure.KEYS, List.of());
  }

  private static RecordShape act() {
    List<Member<?>> members = new ArrayList<>(where());
    members.add(0, must("act", TEXT, "What to do."));
    members.add(must("minutes", NUMBER, "About how long it takes."));
    members.add(must("text", TEXT, "Its sentence."));
    return RecordShape.of(members);
  }

  private static RecordShape caution() {
    return RecordShape.of(
        List.of(
            may("ref", TEXT, "The part, where one is meant."),
            must("kind", TEXT, "Its key."),
            must("text", TEXT, "Its sentence.")));
  }

  private static RecordShape marks() {
    return RecordShape.of(
        List.of(
            must("wiring", COUNT, "For the wiring."),
            must("readings", COUNT, "For the readings."),
            must("total", COUNT, "Both together."),
            must("of", COUNT, "The most that can be had."),
            may("held", new FlagShape(), "True where wiring marks wait for the teacher.")));
  }

  private static <T> Member<T> must(String name, Shape<T> shape, String meaning) {
    return Member.required(name, shape, meaning);
  }

  private static <T> Member<T> may(String name, Shape<T> shape, String meaning) {
    return Member.optional(name, shape, meaning);
  }

  private static ListShape<?> list(Shape<?> item) {
    return new ListShape<>(item, 0, 100_000, false);
  }

  private static ListShape<?> pair(Shape<?> item) {
    return new ListShape<>(item, 2, 2, false);
  }
}
