package org.holewise.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.holewise.running.LabHour;
import org.holewise.running.LabHour.Seat;
import org.holewise.running.RunningSchool;
import org.holewise.running.Visitor;
import org.holewise.school.account.People;
import org.holewise.school.account.Role;
import org.holewise.school.handin.Draft;
import org.holewise.school.handin.Drafts;
import org.holewise.school.handin.HandIns;
import org.holewise.school.handin.MarkingQueue;
import org.holewise.school.handin.Request;
import org.holewise.school.store.StoreScene;

/** A school of two classes, and a browser for each who comes. */
final class Cast {

  static final LabHour.Size SIZE = new LabHour.Size(2, 4, 2);

  private static final String PASSWORD = "violet kettle under seven ladders";

  private final RunningSchool school;
  private final Map<Somebody, Visitor> visitors = new EnumMap<>(Somebody.class);
  private final Map<Somebody, String> tokens = new EnumMap<>(Somebody.class);
  private final List<Seat> seats;

  Cast(RunningSchool school) {
    this.school = school;
    this.seats = LabHour.begun(school, SIZE).seats();
    visitors.put(Somebody.ANYBODY, new Visitor(school));
    comesIn(Somebody.OWN, seats.get(0));
    comesIn(Somebody.PARTNER, seats.get(SIZE.benches()));
    comesIn(Somebody.CLASSMATE, seats.get(1));
    comesIn(Somebody.STRANGER, seats.get(SIZE.students()));
    comesIn(Somebody.TEACHER, Role.TEACHER);
    comesIn(Somebody.TECHNICIAN, Role.TECHNICIAN);
    comesIn(Somebody.ADMINISTRATOR, Role.ADMINISTRATOR);
    stock();
    handIn();
  }

  private void stock() {
    var technician = school.part(People.class).named("The TECHNICIAN").orElseThrow();
    school.part(StoreScene.class).lay(technician);
  }

  private void handIn() {
    var place = place();
    var entries = school.part(Drafts.class).of(place.bench());
    String lines = Draft.of(entries, place.session().exercise()).lines();
    var request = Request.of("first", lines);
    var handIns = school.part(HandIns.class);
    school
        .part(MarkingQueue.class)
        .now(handIns.handIn(place.student(), place.session(), place.bench(), request, lines));
  }

  Visitor visitor(Somebody who) {
    return Optional.ofNullable(visitors.get(who)).orElseThrow();
  }

  /** The place that routes are about. */
  Seat place() {
    return seats.get(0);
  }

  List<Seat> seats() {
    return seats;
  }

  /** Somebody else, whose token is good for nobody but them. */
  Somebody other(Somebody who) {
    return who == Somebody.ADMINISTRATOR ? Somebody.TEACHER : Somebody.ADMINISTRATOR;
  }

  /** The token of the visitor's session; a page with a form has it. */
  String token(Somebody who) {
    var visitor = visitor(who);
    return tokens.computeIfAbsent(
        who, one -> Visitor.token(visitor.opens("/sign-in")).orElseThrow());
  }

  /** The address of a route at the place that it is about. */
  String path(Route route) {
    return route.path(name -> value(route.pattern(), name));
  }

  /** A body with ids in it: {@code {student}} and the like. */
  String filled(String body) {
    String filled = body;
    for (String name : List.of("student", "bench", "session", "class")) {
      filled = filled.replace("{" + name + "}", value("", name));
    }
    return filled;
  }

  private String value(String pattern, String name) {
    var place = place();
    String all = pattern + " " + name;
    if (all.contains("/sessions/{id}") && name.equals("id") || name.equals("session")) {
      return String.valueOf(place.session().id());
    }
    if (pattern.startsWith("/classes") && name.equals("id") || name.equals("class")) {
      return String.valueOf(place.session().group().id());
    }
    return switch (name) {
      case "bench" -> String.valueOf(place.bench().id());
      case "name" -> "mark";
      case "slug" -> "stage-moonlight";
      case "student" -> String.valueOf(place.student().id());
      default -> "1";
    };
  }

  private void comesIn(Somebody who, Seat seat) {
    var visitor = new Visitor(school);
    var answer = visitor.sends("/card", "/card", "code", seat.card());
    assertThat(Visitor.target(answer)).isEqualTo("/today");
    visitors.put(who, visitor);
  }

  private void comesIn(Somebody who, Role role) {
    String name = "The " + role;
    school.part(People.class).add(name, role, PASSWORD);
    var visitor = new Visitor(school);
    assertThat(visitor.signsIn(name, PASSWORD).statusCode()).isEqualTo(302);
    visitors.put(who, visitor);
  }
}
