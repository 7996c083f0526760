package org.holewise.document;

import java.util.List;
import java.util.Set;
import org.holewise.document.shape.Member;
import org.holewise.document.shape.RecordShape;

/** Members that the format has and that the engine cannot make use of yet. */
final class NotYet {
  private static final Set<String> NAMES =
      Set.of("drop", "acvolts", "peak", "ratio", "frequency", "hertz");

  private NotYet() {}

  /** A record whose members of those names are refused as such. */
  static RecordShape record(List<Member<?>> members, List<String> oneOf) {
    return new RecordShape(
        members.stream().filter(member -> !NAMES.contains(member.name())).toList(),
        oneOf.stream().filter(name -> !NAMES.contains(name)).toList(),
        members.stream().map(Member::name).filter(NAMES::contains).toList());
  }
}
