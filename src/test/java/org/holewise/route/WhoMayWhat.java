package org.holewise.route;

import java.util.List;
import java.util.stream.Stream;

/** The table of all routes. A new route needs a row here. */
final class WhoMayWhat {

  /** What filters answer, which no controller has. */
  static final List<Route> FILTERS =
      List.of(new Route("POST", "/sign-in"), new Route("POST", "/sign-out"));

  /**
   * For anybody; for students of the bench, its partner, a classmate at another bench, a stranger
   * from another class; for a teacher, a technician and an administrator.
   */
  static final Table TABLE =
      Table.of(
          """
          #                                             any- a student    who works at the school:
          #                                             body own par cla str  tea tec adm
          GET  /                                            200  302 302 302 302  302 302 302
          GET  /account                                     door 403 403 403 403  200 200 200
          GET  /account/password                            door 403 403 403 403  200 200 200
          GET  /api/schemas/{name}                          200  200 200 200 200  200 200 200
          GET  /audit                                       door 403 403 403 403  403 403 200
          GET  /backups                                     door 403 403 403 403  403 403 200
          GET  /backups/{name}                              door 403 403 403 403  403 403 404
          GET  /bench/{bench}                               door 200 200 404 404  403 403 403
          GET  /bench/{bench}/attempts/{number}             door 200 200 404 404  403 403 403
          GET  /bench/{bench}/attempts/{number}/answers     door 303 303 404 404  403 403 403
          GET  /bench/{bench}/board                         door 200 200 404 404  403 403 403
          GET  /bench/{bench}/draft                         door 303 303 404 404  403 403 403
          GET  /bench/{bench}/entries                       door 200 200 404 404  403 403 403
          GET  /bench/{bench}/gate                          door 303 303 404 404  403 403 403
          GET  /bench/{bench}/hand-ins                      door 303 303 404 404  403 403 403
          GET  /bench/{bench}/help                          door 303 303 404 404  403 403 403
          GET  /bench/{bench}/help/ended                    door 303 303 404 404  403 403 403
          GET  /card                                        200  200 200 200 200  200 200 200
          GET  /classes                                     door 403 403 403 403  200 403 200
          GET  /classes/{id}                                door 403 403 403 403  200 403 200
          GET  /classes/{id}/students/{student}             door 403 403 403 403  200 403 200
          GET  /error                                       404  404 404 404 404  404 404 404
          GET  /people                                      door 403 403 403 403  403 403 200
          GET  /people/{id}                                 door 403 403 403 403  403 403 200
          GET  /sessions                                    door 403 403 403 403  200 403 200
          GET  /sessions/causes                             door 403 403 403 403  200 403 200
          GET  /sessions/new                                door 403 403 403 403  200 403 200
          GET  /sessions/{id}                               door 403 403 403 403  200 403 200
          GET  /sessions/{id}/benches/{seat}                door 403 403 403 403  200 403 200
          GET  /sessions/{id}/marks.csv                     door 403 403 403 403  200 403 200
          GET  /sessions/{id}/room                          door 403 403 403 403  200 403 200
          GET  /sessions/{id}/room/tiles                    door 403 403 403 403  200 403 200
          GET  /setup                                       404  404 404 404 404  404 404 404
          GET  /sign-in                                     200  200 200 200 200  200 200 200
          GET  /store                                       door 403 403 403 403  403 200 200
          GET  /store/items/new                             door 403 403 403 403  403 200 200
          GET  /store/items/{id}                            door 403 403 403 403  403 200 200
          GET  /store/items/{id}/edit                       door 403 403 403 403  403 200 200
          GET  /store/orders                                door 403 403 403 403  403 200 200
          GET  /store/orders.csv                            door 403 403 403 403  403 200 200
          GET  /store/sessions/{id}                         door 403 403 403 403  403 200 200
          GET  /store/week                                  door 403 403 403 403  403 200 200
          GET  /schematics                                  door 403 403 403 403  200 403 200
          GET  /today                                       door 200 200 200 200  403 403 403
          GET  /today/{session}/bench                       door 303 303 303 303  403 403 403
          GET  /try                                         door 403 403 403 403  200 403 200
          GET  /try/{slug}                                  door 403 403 403 403  200 403 200
          GET  /try/{slug}/check                            door 403 403 403 403  302 403 302
          GET  /try/{slug}/mark                             door 403 403 403 403  302 403 302
          # What changes something, in an order that leaves each the state that it needs.
          POST /account/password                            door 403 403 403 403  200 200 200 | current=wrong&password=wrong&again=wrong
          POST /account/tokens                              door 403 403 403 403  200 403 200 | label=printer
          POST /account/tokens/{id}/revoked                 door 403 403 403 403  302 403 404
          POST /api/marks                                   401  401 401 401 401  401 401 401
          POST /api/marks/batch                             401  401 401 401 401  401 401 401
          POST /backups                                     door 403 403 403 403  403 403 302
          POST /bench/{bench}/attempts/{number}/answers     door 422 422 404 404  403 403 403 | key=a&line=volts+R1.1+P1.-+5.00+V
          POST /bench/{bench}/draft                         door 200 303 404 404  403 403 403 | reading:supply=5.00+V
          POST /bench/{bench}/entries                       door 200 200 404 404  403 403 403 | {"entries":[{"name":"reading:supply","text":"5.00 V","base":0}]}
          POST /bench/{bench}/gate                          door 303 303 404 404  403 403 403 | reading:supply=5.00+V
          POST /bench/{bench}/hand-ins                      door 303 303 404 404  403 403 403 | key=second
          POST /bench/{bench}/help                          door 303 303 404 404  403 403 403 | key=x
          POST /bench/{bench}/help/ended                    door 303 303 404 404  403 403 403 | key=x
          POST /card                                        200  200 200 200 200  200 200 200 | code=CCCCC-CCCCC-CCCCC
          POST /classes                                     door 403 403 403 403  302 403 200 | name=Lanterns+9
          POST /classes/students/{student}/placed           door 403 403 403 403  302 403 302 | to={class}
          POST /classes/{id}/cards                          door 403 403 403 403  200 403 200 | for=all
          POST /classes/{id}/name                           door 403 403 403 403  302 403 302 | name=Lanterns+again
          POST /classes/{id}/students                       door 403 403 403 403  302 403 302 | names=Hazel
          POST /classes/{id}/students/{student}/moved       door 403 403 403 403  302 403 302 | to={class}
          POST /classes/{id}/students/{student}/name        door 403 403 403 403  302 403 302 | name=Wren
          POST /people                                      door 403 403 403 403  403 403 302 | name=Hazel&role=TEACHER&password=violet+kettle+under+seven+ladders
          POST /people/{id}/password                        door 403 403 403 403  403 403 200 | password=short
          POST /sessions                                    door 403 403 403 403  200 403 200 | day=soon
          POST /sessions/{id}/benches/{seat}/attempts/{number}/causes door 403 403 403 403  302 403 302 | cause=none
          POST /sessions/{id}/benches/{seat}/attempts/{number}/overrulings door 403 403 403 403  200 403 200 | wiring=61
          POST /sessions/{id}/benches/{seat}/help-ended       door 403 403 403 403  302 403 302
          POST /sessions/{id}/benches/{seat}/looks            door 403 403 403 403  302 403 302 | note=sound
          POST /sessions/{id}/members                       door 403 403 403 403  400 403 400
          POST /sessions/{id}/settings                      door 403 403 403 403  302 403 302 | hint=PLACE
          POST /sessions/{id}/released                      door 403 403 403 403  302 403 302
          POST /sessions/{id}/withheld                      door 403 403 403 403  302 403 302
          POST /sessions/{id}/closed                        door 403 403 403 403  302 403 302
          POST /sessions/{id}/opened                        door 403 403 403 403  302 403 302
          POST /setup                                       404  404 404 404 404  404 404 404
          POST /sign-in                                     200  200 200 200 200  200 200 200 | name=Nobody&password=nothing+at+all
          POST /sign-in/refused                             200  200 200 200 200  200 200 200
          POST /store/items                                 door 403 403 403 403  403 302 200 | label=Tape&drawer=A1&minimum=0&pack=1
          POST /store/items/{id}                            door 403 403 403 403  403 302 302 | label=Changed&drawer=A1&minimum=0&pack=1
          POST /store/items/{id}/delivered                  door 403 403 403 403  403 302 302 | key=0f8fad5b-d9cb-469f-a165-708677289501&delivered=3
          POST /store/items/{id}/broken                     door 403 403 403 403  403 302 302 | key=0f8fad5b-d9cb-469f-a165-708677289502&broken=1
          POST /store/items/{id}/counted                    door 403 403 403 403  403 200 200 | key=0f8fad5b-d9cb-469f-a165-708677289503&counted=5&shown=0
          POST /store/items/{id}/movements/{movement}/put-right door 403 403 403 403  403 302 302
          POST /store/sessions/{id}/packed                  door 403 403 403 403  403 200 200 | key=0f8fad5b-d9cb-469f-a165-708677289504
          POST /store/sessions/{id}/returned                door 403 403 403 403  403 200 200 | key=0f8fad5b-d9cb-469f-a165-708677289505
          POST /today/{session}/bench                       door 303 303 409 404  403 403 403 | number=1
          POST /try/{slug}/check                            door 403 403 403 403  200 403 200 | lines=R1+b10+b15
          POST /try/{slug}/mark                             door 403 403 403 403  200 403 200 | lines=R1+b10+b15
          POST /classes/{id}/students/{student}/removed     door 403 403 403 403  302 403 404
          POST /people/{id}/left                            door 403 403 403 403  403 403 302
          POST /sign-out                                    302  403 302 302 302  302 302 302
          """);

  private WhoMayWhat() {}

  static List<Route> with(List<Route> routes) {
    return Stream.concat(routes.stream(), FILTERS.stream()).sorted().toList();
  }
}
