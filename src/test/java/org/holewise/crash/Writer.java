package org.holewise.crash;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.UncheckedIOException;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.holewise.crash.Ledger.Key;
import org.holewise.crash.Ledger.Place;
import org.holewise.running.LabHour.Seat;
import org.holewise.running.Site;
import org.holewise.running.Visitor;
import tools.jackson.databind.json.JsonMapper;

/** A student who saves an entry that nobody else at the bench writes, and now and then hands in. */
final class Writer {

  private static final Duration PATIENCE = Duration.ofSeconds(20);
  private static final int SAVES_A_HAND_IN = 8;

  private final Site site;
  private final Seat seat;
  private final Place place;
  private final List<String> texts;
  private final Ledger ledger;
  private final Random random;
  private final Visitor visitor;
  private String token = "";
  private int saves;
  private Optional<String> openText = Optional.empty();
  private Optional<String> openKey = Optional.empty();

  Writer(Site site, Seat seat, KillContract.Entry entry, Ledger ledger, int seed) {
    this.site = site;
    this.seat = seat;
    this.place = new Place(seat.bench().id(), entry.name());
    this.texts = entry.texts();
    this.ledger = ledger;
    this.random = new Random(seed);
    this.visitor = new Visitor(site);
  }

  /** Comes in by the card. */
  void comesIn() {
    var answer = visitor.sends("/card", "/card", "code", seat.card());
    assertThat(Visitor.target(answer)).isEqualTo("/today");
    comesBack();
  }

  /** Opens the bench's page, being signed in. */
  void comesBack() {
    var page = visitor.opens(path(""));
    assertThat(page.statusCode()).as("%s at the bench", seat.student()).isEqualTo(200);
    token = Visitor.token(page).orElseThrow();
  }

  /** Sends again what was not answered. */
  void repeats() {
    openText.ifPresent(this::save);
    openKey.ifPresent(this::handIn);
  }

  /** Writes until the school is gone. */
  void writes() {
    try {
      while (true) {
        save(texts.get(saves++ % texts.size()));
        if (random.nextInt(SAVES_A_HAND_IN) == 0) {
          handIn(UUID.randomUUID().toString());
        }
      }
    } catch (UncheckedIOException gone) {
      assertThat(openText.isPresent() || openKey.isPresent()).isTrue();
    }
  }

  private void save(String text) {
    openText = Optional.of(text);
    ledger.sent(place, text);
    var answer = visitor.send(saving(text));
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    var saved = JsonMapper.shared().readTree(answer.body()).path("entries").path(0);
    assertThat(saved.path("text").asString()).isEqualTo(text);
    ledger.acknowledged(place, text, saved.path("revision").asLong());
    openText = Optional.empty();
  }

  private void handIn(String key) {
    var sent = new Key(place.bench(), key);
    openKey = Optional.of(key);
    ledger.sent(sent);
    var answer = visitor.sendsBare(path("/hand-ins"), "_csrf", token, "key", key);
    assertThat(answer.statusCode()).as(answer.body()).isIn(302, 303);
    ledger.acknowledged(sent);
    openKey = Optional.empty();
  }

  private HttpRequest saving(String text) {
    var entry = Map.of("name", place.entry(), "text", text, "base", 0);
    var body = JsonMapper.shared().writeValueAsString(Map.of("entries", List.of(entry)));
    return HttpRequest.newBuilder(site.at(path("/entries")))
        .timeout(PATIENCE)
        .header("Content-Type", "application/json")
        .header("X-CSRF-TOKEN", token)
        .POST(BodyPublishers.ofString(body))
        .build();
  }

  private String path(String under) {
    return "/bench/" + place.bench() + under;
  }
}
