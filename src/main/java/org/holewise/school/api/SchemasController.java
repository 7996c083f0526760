package org.holewise.school.api;

import org.holewise.document.DocumentSchema;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;

/** The schemas of the three documents, for anybody. */
@RestController
class SchemasController {
  private static final String SCHEMA = "application/schema+json";

  @GetMapping(
      value = "/api/schemas/{name}",
      produces = {SCHEMA, MediaType.APPLICATION_JSON_VALUE})
  byte[] schema(@PathVariable String name) {
    return DocumentSchema.named(name)
        .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND))
        .bytes();
  }
}
