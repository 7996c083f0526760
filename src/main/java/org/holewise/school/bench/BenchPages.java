package org.holewise.school.bench;

import java.util.List;
import java.util.UUID;
import org.holewise.document.picture.Highlight;
import org.holewise.engine.exercise.Exercise;
import org.holewise.school.account.Person;
import org.holewise.school.bench.BenchPage.GateView;
import org.holewise.school.bench.BenchPage.Line;
import org.holewise.school.bench.BenchPage.Replaced;
import org.holewise.school.handin.Draft;
import org.holewise.school.handin.DraftEntry;
import org.holewise.school.handin.Drafts;
import org.holewise.school.handin.EntryName;
import org.holewise.school.handin.GateChecks;
import org.holewise.school.handin.HelpCalls;
import org.holewise.school.handin.Looks;
import org.holewise.school.handin.Power;
import org.holewise.school.sheet.BenchView;
import org.holewise.school.sheet.ExerciseSheet;
import org.holewise.school.sheet.Gate;
import org.holewise.school.sheet.GateAnswer.Stop;
import org.holewise.school.sheet.Moments;
import org.holewise.school.sheet.Schematics;
import org.springframework.stereotype.Component;

/** Makes the working page of a bench from what is kept, and from what was just sent. */
@Component
class BenchPages {

  private final Drafts drafts;
  private final Attempts attempts;
  private final GateChecks gate;
  private final Looks looks;
  private final HelpCalls help;
  private final PinLabels labels;
  private final Schematics schematics;
  private final Moments moments;

  BenchPages(
      Drafts drafts,
      Attempts attempts,
      GateChecks gate,
      Looks looks,
      HelpCalls help,
      PinLabels labels,
      Schematics schematics,
      Moments moments) {
    this.drafts = drafts;
    this.attempts = attempts;
    this.gate = gate;
    this.looks = looks;
    this.help = help;
    this.labels = labels;
    this.schematics = schematics;
    this.moments = moments;
  }

  /** The page with the board as it is, its used columns alone. */
  BenchPage of(Workplace place, Answered answered) {
    return of(place, answered, false);
  }

  /** The page with every hole of the board, to be tapped. */
  BenchPage tappable(Workplace place) {
    return of(place, Answered.nothing(), true);
  }

  private BenchPage of(Workplace place, Answered answered, boolean whole) {
    Exercise exercise = place.exercise();
    var entries = drafts.of(place.bench());
    var draft = Draft.of(entries, exercise);
    String key = UUID.randomUUID().toString();
    var fields = new EntryFields(exercise, entries, draft, answered.kept(), labels);
    GateView power = gate(place, draft);
    return new BenchPage(
        place.bench().id(),
        place.student().id(),
        place.bench().number(),
        partners(place),
        place.session().isOpen(),
        ExerciseSheet.of(exercise),
        schematics.of(exercise),
        fields.parts(),
        fields.links(key),
        fields.unnamed(EntryName.Kind.LINK),
        fields.readings(),
        fields.extras(),
        fields.unnamed(EntryName.Kind.EXTRA),
        new Line(String.join("\n", answered.lines().left()), answered.lines().problems()),
        key,
        board(place, draft, power, whole),
        DraftNotes.of(draft, exercise, labels),
        power,
        attempts.of(place.bench(), place.session()),
        help.waitsSince(place.bench()).map(moments::of),
        answered.why(),
        answered.why().isPresent() ? fields.summary() : List.of(),
        replaced(answered, exercise));
  }

  private static BenchView board(Workplace place, Draft draft, GateView power, boolean whole) {
    var holes = power.stops().stream().flatMap(stop -> stop.holes().stream()).distinct().toList();
    var rings = Highlight.rings(holes);
    var build = draft.record().build();
    return whole
        ? BenchView.whole(place.exercise(), build, rings)
        : BenchView.of(place.exercise(), build, rings);
  }

  private GateView gate(Workplace place, Draft draft) {
    var asked = gate.latest(place.bench());
    var looked = looks.latest(place.bench());
    var power = Power.of(place.session(), draft.layout(), asked, looked);
    if (power == Power.NOT_ASKED || power == Power.CHANGED) {
      return new GateView(power, List.of(), List.of(), List.of());
    }
    var answer = Gate.check(place.exercise(), draft.record());
    var stops = power == Power.STOPPED ? answer.stops() : List.<Stop>of();
    return new GateView(power, stops, answer.care(), answer.missing());
  }

  private static List<String> partners(Workplace place) {
    return place.bench().members().stream()
        .filter(member -> member.id() != place.student().id())
        .map(Person::name)
        .toList();
  }

  private static List<Replaced> replaced(Answered answered, Exercise exercise) {
    return answered.replaced().stream()
        .map(was -> new Replaced(was.name(), title(was, exercise), was.text(), was.by().name()))
        .toList();
  }

  // An id that a page made up says nothing to anybody.
  private static String title(DraftEntry entry, Exercise exercise) {
    return EntryName.read(entry.name(), exercise)
        .filter(name -> !name.isMadeUp())
        .map(EntryName::id)
        .orElse("");
  }
}
