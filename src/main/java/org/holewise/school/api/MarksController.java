package org.holewise.school.api;

import java.util.List;
import org.holewise.document.MarkDocument;
import org.holewise.document.MarkRequest;
import org.holewise.document.ProblemDocument;
import org.holewise.document.RequestDocument;
import org.holewise.document.shape.Problem;
import org.holewise.document.shape.Read;
import org.holewise.document.shape.Read.Ok;
import org.holewise.document.text.Messages;
import org.holewise.school.library.Library;
import org.holewise.school.library.LibraryExercise;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Marks builds that programs send, and keeps nothing. */
@RestController
@RequestMapping(
    path = "/api/marks",
    consumes = MediaType.APPLICATION_JSON_VALUE,
    produces = MediaType.APPLICATION_JSON_VALUE)
class MarksController {
  private static final Messages MESSAGES = Messages.english();

  private final RequestDocument requests;
  private final Marker marker;

  MarksController(Library library, Marker marker) {
    this.requests = new RequestDocument(slug -> library.find(slug).map(LibraryExercise::exercise));
    this.marker = marker;
  }

  @PostMapping
  ResponseEntity<byte[]> one(@RequestBody byte[] body) {
    var read = requests.read(body);
    return read instanceof Ok<MarkRequest> ok ? answer(mark(ok.value())) : refuse(read.problems());
  }

  @PostMapping("/batch")
  ResponseEntity<byte[]> batch(@RequestBody byte[] body) {
    var read = requests.readBatch(body);
    if (!(read instanceof Ok<List<Read<MarkRequest>>> ok)) {
      return refuse(read.problems());
    }
    var answers = JsonNodeFactory.instance.arrayNode();
    for (Read<MarkRequest> each : ok.value()) {
      answers.add(
          each instanceof Ok<MarkRequest> sound ? mark(sound.value()) : problem(each.problems()));
    }
    return answer(answers);
  }

  private ObjectNode mark(MarkRequest request) {
    return MarkDocument.tree(request, marker.mark(request), MESSAGES);
  }

  private static ObjectNode problem(List<Problem> problems) {
    return ProblemDocument.tree(problems, MESSAGES);
  }

  private static ResponseEntity<byte[]> answer(JsonNode document) {
    return ResponseEntity.ok()
        .contentType(MediaType.APPLICATION_JSON)
        .body(MarkDocument.bytes(document));
  }

  private static ResponseEntity<byte[]> refuse(List<Problem> problems) {
    return ResponseEntity.status(ProblemDocument.STATUS)
        .contentType(MediaType.APPLICATION_PROBLEM_JSON)
        .body(MarkDocument.bytes(problem(problems)));
  }
}
