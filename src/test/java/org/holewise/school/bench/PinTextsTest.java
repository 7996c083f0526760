package org.holewise.school.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.holewise.engine.part.Part;
import org.holewise.school.handin.EntryName;
import org.holewise.school.sheet.Shipped;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class PinTextsTest {

  private static Part part(String ref) {
    return Shipped.exercise("stage-pulse").part(ref).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "R1, i9 i13, 1=i9 2=i13",
    "R1, 2=i13 1=i9 marked 10k, 1=i9 2=i13 marked 10k",
    "C1, c13 c10, +=c13 -=c10",
    "U1, pin1=e12, pin1=e12",
    "U1, e12, pin1=e12",
    "U1, PIN1 = e12 marked 7555, pin1=e12 marked 7555"
  })
  void aTextIsReadIntoFieldsAndWrittenFromThem(String ref, String text, String written) {
    assertThat(PinTexts.read(part(ref), text).text()).isEqualTo(written);
  }

  @Test
  void aChipHasOneFieldForAllItsPins() {
    assertThat(PinTexts.names(part("U1"))).containsExactly("pin1");
    assertThat(PinTexts.of(part("U1"), Map.of("pin1", " e 12 "), "").text()).isEqualTo("pin1=e12");
  }

  @Test
  void aChipWhosePinsWereTypedOneByOneIsShownAsItStands() {
    var name = new EntryName(EntryName.Kind.PART, "U1");
    var exercise = Shipped.exercise("stage-pulse");
    String text = "1=e12 2=e13 3=e14 4=e15";
    Map<String, String> fields = SentEntry.fields(name, text, exercise);
    assertThat(fields).containsEntry("pin1", text);
    assertThat(SentEntry.of(name, fields, text, 1, exercise).changed()).isFalse();
  }
}
