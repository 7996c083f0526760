package org.holewise.school.handin;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import org.holewise.running.Office;
import org.holewise.school.account.Person;
import org.holewise.store.Store;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What holds of drafts on every kind of database. */
abstract class DraftsContract {

  private final Office office;
  private final LabScene scene;
  private final Drafts drafts;

  DraftsContract(Store store) {
    office = new Office(store, HandInContract.libraryType());
    scene = new LabScene(office);
    drafts = office.part(Drafts.class);
  }

  @AfterEach
  void close() {
    office.close();
  }

  private Saved save(Person writer, String name, String text, long base) {
    office.clock().forward(Duration.ofSeconds(1));
    return drafts.save(writer, scene.bench(), List.of(new Change(name, text, base)));
  }

  @Test
  void countTheTextsOfAnEntry() {
    assertThat(save(scene.wren, "part:R1", "b10 b14", 0).entries().get(0).revision()).isOne();
    assertThat(save(scene.wren, "part:R1", "b10 b15", 1).entries().get(0).revision()).isEqualTo(2);
    assertThat(drafts.of(scene.bench())).extracting(DraftEntry::text).containsExactly("b10 b15");
  }

  @Test
  void takeARepeatForWhatItIs() {
    save(scene.wren, "part:R1", "b10 b14", 0);
    long changes = scene.session().changes();
    var again = save(scene.wren, "part:R1", "b10 b14", 0);
    assertThat(again.entries().get(0).revision()).isOne();
    assertThat(again.replaced()).isEmpty();
    assertThat(scene.session().changes()).isEqualTo(changes);
  }

  @Test
  void letTheLastWriterWinAndTellWhatWasReplacedUnseen() {
    save(scene.wren, "part:R1", "b10 b14", 0);
    save(scene.wren, "part:R1", "b10 b15", 1);
    var saved = save(scene.sorrel, "part:R1", "b10 b16", 1);
    assertThat(saved.replaced()).extracting(DraftEntry::text).containsExactly("b10 b15");
    assertThat(saved.replaced()).extracting(DraftEntry::by).containsExactly(scene.wren);
    assertThat(drafts.of(scene.bench())).extracting(DraftEntry::text).containsExactly("b10 b16");
  }

  @Test
  void keepAnEntryThatWasTakenOutAsAnEmptyText() {
    save(scene.wren, "link:k1", "a10 a22", 0);
    save(scene.wren, "link:k1", "", 1);
    assertThat(drafts.of(scene.bench())).extracting(DraftEntry::text).containsExactly("");
    assertThat(Draft.of(drafts.of(scene.bench()), scene.session().exercise()).lines()).isEmpty();
  }

  @Test
  void loseNoWriterOfTwoAtOnce() throws InterruptedException, ExecutionException {
    var writers = new ArrayList<Callable<Saved>>();
    for (int i = 0; i < 20; i++) {
      String name = "link:w" + i;
      Person writer = i % 2 == 0 ? scene.wren : scene.sorrel;
      var change = List.of(new Change(name, "a1 a2", 0));
      writers.add(() -> drafts.save(writer, scene.bench(), change));
    }
    var threads = Executors.newFixedThreadPool(writers.size());
    try {
      for (var written : threads.invokeAll(writers)) {
        assertThat(written.get().entries()).hasSize(1);
      }
    } finally {
      threads.shutdown();
    }
    assertThat(drafts.of(scene.bench())).hasSize(20);
  }

  @Test
  void areOneBuildInTheOrderOfTheExercise() {
    save(scene.wren, "reading:supply", "5.01 V", 0);
    save(scene.wren, "link:k2", "a22 -a22", 0);
    save(scene.wren, "link:k1", "+a10 a10", 0);
    save(scene.wren, "part:R1", "1=b10", 0);
    save(scene.wren, "part:P1", "+a3 z99", 0);
    var draft = Draft.of(drafts.of(scene.bench()), scene.session().exercise());
    assertThat(draft.lines().lines())
        .containsExactly(
            "P1 +a3 z99", "R1 1=b10", "link a22 -a22", "link +a10 a10", "supply 5.01 V");
    assertThat(draft.layout()).doesNotContain("supply").contains("R1 1=b10");
    assertThat(draft.problems()).containsOnlyKeys("part:P1");
    assertThat(draft.problems().get("part:P1")).contains("z99");
  }
}
