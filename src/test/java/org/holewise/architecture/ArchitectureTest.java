package org.holewise.architecture;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Holds the packages to the table of what may use what. A new package needs a row here. */
@Tag("fast")
class ArchitectureTest {

  private static final String OURS = "org.holewise";

  private static final AllowedUses ALLOWED =
      AllowedUses.of(
          """
          (root)           :
          engine.quantity  :
          engine.part      : engine.quantity
          engine.board     : engine.quantity engine.part
          engine.exercise  : engine.quantity engine.part engine.board
          engine.netlist   : engine.quantity engine.part engine.board engine.exercise
          engine.wiring    : engine.quantity engine.part engine.board engine.exercise engine.netlist
          engine.solver    : engine.quantity engine.part engine.board engine.exercise engine.netlist engine.wiring
          engine.reading   : engine.quantity engine.part engine.board engine.exercise engine.netlist engine.wiring engine.solver
          engine.diagnosis : engine.quantity engine.part engine.board engine.exercise engine.netlist engine.wiring engine.solver engine.reading
          engine.marking   : engine.quantity engine.part engine.board engine.exercise engine.netlist engine.wiring engine.solver engine.reading engine.diagnosis
          document         : engine.* document.*
          document.lines   : engine.* document.text
          document.picture : engine.*
          document.shape   : engine.* document.text
          document.text    : engine.*
          drawing          : engine.part engine.exercise drawing.*
          drawing.check    : engine.part engine.exercise drawing.circuit drawing.sheet
          drawing.circuit  : engine.part engine.exercise
          drawing.label    : drawing.sheet
          drawing.place    : engine.quantity engine.part engine.exercise drawing.circuit drawing.sheet drawing.symbol
          drawing.route    : drawing.sheet drawing.symbol drawing.place
          drawing.sheet    : engine.part
          drawing.symbol   : engine.part drawing.sheet
          school.account   : engine.* document
          school.csv       :
          school.roster    : school.account
          school.library   : engine.* document.* document school.account
          school.session   : engine.* school.account school.roster school.library
          school.handin    : engine.* document.* document school.account school.roster school.library school.session school.sheet
          school.bench     : engine.* document.* document school.account school.roster school.library school.session school.sheet school.handin
          school.store     : engine.* document.* document school.account school.roster school.library school.session school.sheet school.csv
          school.api       : engine.* document.* document school.account school.library
          school.sheet     : engine.* document.* document drawing drawing.sheet school.account school.roster school.library school.session
          school.room      : engine.* document.* document school.account school.csv school.roster school.library school.session school.sheet school.handin
          school.cause     : engine.* school.handin
          school.trial     : engine.* document.* document school.account school.library school.sheet
          school.demo      : engine.* school.account school.roster school.library school.session school.sheet school.handin school.store school.trial
          school.system    : engine.* document drawing.sheet school.*
          """);

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages(OURS);

  @Test
  void everyPackageHasARowAndEveryRowHasClasses() {
    assertThat(uses().keySet()).isEqualTo(ALLOWED.rows().keySet());
  }

  @Test
  void everyPackageUsesOnlyWhatItsRowAllows() {
    assertThat(ALLOWED.refused(uses())).isEmpty();
  }

  @Test
  void noPackagesFormACycle() {
    slices().matching(OURS + ".(**)").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void theTableRefusesWhatItDoesNotName() {
    var table = AllowedUses.of("a.b : c\nd : a.*");
    assertThat(table.refused(Map.of("a.b", List.of("c"), "d", List.of("a.b")))).isEmpty();
    assertThat(table.refused(Map.of("a.b", List.of("d")))).containsExactly("a.b -> d");
    assertThat(table.refused(Map.of("x", List.of("c")))).containsExactly("x -> c");
  }

  private static Map<String, Set<String>> uses() {
    var uses = new TreeMap<String, Set<String>>();
    for (JavaClass user : CLASSES) {
      var row = uses.computeIfAbsent(name(user), key -> new TreeSet<>());
      user.getDirectDependenciesFromSelf().stream()
          .map(use -> use.getTargetClass().getBaseComponentType())
          .filter(used -> used.getPackageName().startsWith(OURS))
          .map(ArchitectureTest::name)
          .filter(used -> !used.equals(name(user)))
          .forEach(row::add);
    }
    return uses;
  }

  private static String name(JavaClass type) {
    String name = type.getPackageName().substring(OURS.length());
    return name.isEmpty() ? "(root)" : name.substring(1);
  }
}
