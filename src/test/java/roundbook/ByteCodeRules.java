package roundbook;

import static com.tngtech.archunit.core.importer.ImportOption.Predefined.DO_NOT_INCLUDE_PACKAGE_INFOS;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Holds compiled classes against the architecture by reading their byte code. */
final class ByteCodeRules {
  private static final String APP = Room.ROOT + "app";

  private ByteCodeRules() {}

  /** Returns a line for each breach in the classes below a folder. */
  static List<String> breaches(Path folder) {
    JavaClasses classes =
        new ClassFileImporter().withImportOption(DO_NOT_INCLUDE_PACKAGE_INFOS).importPath(folder);
    return Stream.of(rows(), habits(), shape())
        .flatMap(rules -> rules)
        .map(rule -> rule.allowEmptyShould(true).evaluate(classes).getFailureReport())
        .flatMap(report -> report.getDetails().stream())
        .toList();
  }

  private static Stream<ArchRule> rows() {
    return Room.all().stream().map(ByteCodeRules::row);
  }

  private static ArchRule row(Room room) {
    return classes()
        .that()
        .resideInAPackage(room.packageName())
        .should()
        .onlyDependOnClassesThat(
            DescribedPredicate.describe(
                "its row allows", used -> used.isPrimitive() || room.mayUse(packageOf(used))));
  }

  private static String packageOf(JavaClass used) {
    JavaClass plain = used.getBaseComponentType();
    return plain.isPrimitive() ? "java.lang" : plain.getPackageName();
  }

  private static Stream<ArchRule> habits() {
    return Stream.of(Habits.values())
        .map(
            habit ->
                noClasses()
                    .that()
                    .resideOutsideOfPackage(APP)
                    .should()
                    .accessTargetWhere(habit.access()));
  }

  private static Stream<ArchRule> shape() {
    return Stream.of(
        slices().matching(Room.ROOT + "(*)..").should().beFreeOfCycles(),
        classes()
            .should()
            .resideInAnyPackage(Room.all().stream().map(Room::packageName).toArray(String[]::new)),
        fields().that().areStatic().should().beFinal());
  }
}
