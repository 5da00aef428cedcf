package fairpull.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The map of DEVELOPERS.md, held: which package may see which, and what may be used where. */
class ArchitectureTest {
    private static final Pattern NAMES_NOTHING = Pattern.compile(".*\\.(util|utils|helper|helpers|manager|common|impl)(\\..*)?");
    private static JavaClasses program;

    @BeforeAll
    static void importProgram() {
        program = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("fairpull");
    }

    @Test
    void theImportIsNotEmpty() {
        assertThat(program.size()).isGreaterThan(150);
    }

    @Test
    void layersPointOneWay() {
        check(layeredArchitecture().consideringOnlyDependenciesInLayers()
                .layer("domain").definedBy("fairpull.domain..")
                .layer("engine").definedBy("fairpull.engine..")
                .layer("io").definedBy("fairpull.io..")
                .layer("report").definedBy("fairpull.report..")
                .layer("app").definedBy("fairpull.app..")
                .layer("cli").definedBy("fairpull.cli..")
                .layer("ui").definedBy("fairpull.ui..")
                .whereLayer("domain").mayNotAccessAnyLayer()
                .whereLayer("engine").mayOnlyAccessLayers("domain")
                .whereLayer("io").mayOnlyAccessLayers("domain")
                .whereLayer("report").mayOnlyAccessLayers("domain")
                .whereLayer("app").mayOnlyAccessLayers("domain", "engine", "io", "report")
                .whereLayer("cli").mayOnlyAccessLayers("domain", "app")
                .whereLayer("ui").mayOnlyAccessLayers("domain", "app", "report"));
    }

    @Test
    void theWindowPaintsChartsAndMakesNoSentences() {
        check(noClasses().that().resideInAPackage("fairpull.ui..").should().dependOnClassesThat()
                .resideInAnyPackage("fairpull.report.wording..", "fairpull.report.write.."));
    }

    @Test
    void swingIsSeenByTheWindowAlone() {
        check(noClasses().that().resideOutsideOfPackage("fairpull.ui..").should().dependOnClassesThat()
                .resideInAPackage("javax.swing.."));
        // the PDF library's interface for drawn objects names a rectangle and a shape, printed pages are the system's own; the platform reads pictures into images of AWT
        check(noClasses().that().resideOutsideOfPackages("fairpull.ui..", "fairpull.report.chart..", "fairpull.io.picture..").and()
                .doNotHaveFullyQualifiedName("fairpull.report.write.PdfCharts").and()
                .doNotHaveFullyQualifiedName("fairpull.report.write.PdfPages").should().dependOnClassesThat()
                .resideInAPackage("java.awt.."));
    }

    @Test
    void noTwoPackagesFormACycle() {
        check(slices().matching("fairpull.(**)").should().beFreeOfCycles());
    }

    @Test
    void statisticsKnowNoPlanAndNoNeighbour() {
        check(noClasses().that().resideInAPackage("fairpull.engine.stats..").should().dependOnClassesThat()
                .resideInAnyPackage("fairpull.domain..", "fairpull.engine.judging..", "fairpull.engine.planning..", "fairpull.engine.curve..",
                        "fairpull.engine.air..", "fairpull.engine.heat..", "fairpull.engine.proving.."));
    }

    @Test
    void heatKnowsOnlyStatistics() {
        check(classes().that().resideInAPackage("fairpull.engine.heat..").should().onlyDependOnClassesThat()
                .resideInAnyPackage("fairpull.engine.heat..", "fairpull.engine.stats..", "fairpull.domain..", "java.."));
    }

    @Test
    void planningDoesNotSeeJudging() {
        check(noClasses().that().resideInAPackage("fairpull.engine.planning..").should().dependOnClassesThat()
                .resideInAPackage("fairpull.engine.judging.."));
    }

    @Test
    void airKnowsOnlyStatistics() {
        check(classes().that().resideInAPackage("fairpull.engine.air..").should().onlyDependOnClassesThat()
                .resideInAnyPackage("fairpull.engine.air..", "fairpull.engine.stats..", "fairpull.domain..", "java.."));
    }

    @Test
    void tracingKnowsTheDomainAlone() {
        check(classes().that().resideInAPackage("fairpull.engine.tracing..").should().onlyDependOnClassesThat()
                .resideInAnyPackage("fairpull.engine.tracing..", "fairpull.domain..", "java.."));
    }

    @Test
    void nothingOfTheEngineSeesProving() {
        check(noClasses().that().resideInAPackage("fairpull.engine..").and().resideOutsideOfPackage("fairpull.engine.proving..").should()
                .dependOnClassesThat().resideInAPackage("fairpull.engine.proving.."));
        check(noClasses().that().resideInAPackage("fairpull.engine.proving..").should().dependOnClassesThat()
                .resideInAnyPackage("fairpull.engine.planning..", "fairpull.engine.curve.."));
    }

    @Test
    void threadsAreStartedInOnePlace() {
        check(noClasses().that().resideOutsideOfPackages("fairpull.app.task..", "fairpull.app.document..", "fairpull.cli..").should().dependOnClassesThat()
                .resideInAPackage("java.util.concurrent.."));
    }

    @Test
    void theRigRecordSeesStatisticsAlone() {
        check(noClasses().that().resideInAPackage("fairpull.engine.rig..").should().dependOnClassesThat()
                .resideInAnyPackage("fairpull.engine.planning..", "fairpull.engine.judging..", "fairpull.engine.curve.."));
        check(noClasses().that().resideInAnyPackage("fairpull.engine.stats..", "fairpull.engine.planning..", "fairpull.engine.judging..")
                .should().dependOnClassesThat().resideInAPackage("fairpull.engine.rig.."));
    }

    @Test
    void domainUsesValueTypesOnly() {
        check(classes().that().resideInAPackage("fairpull.domain..").should().onlyDependOnClassesThat()
                .resideInAnyPackage("fairpull.domain..", "java.lang..", "java.util..", "java.time..", "java.math.."));
    }

    @Test
    void domainAndEngineArePure() {
        check(noClasses().that().resideInAnyPackage("fairpull.domain..", "fairpull.engine..").should().dependOnClassesThat()
                .resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.util.concurrent..", "java.util.logging..", "java.awt.."));
        for (String reading : List.of("currentTimeMillis", "nanoTime")) {
            check(noClasses().that().resideInAnyPackage("fairpull.domain..", "fairpull.engine..").should().callMethod(System.class, reading));
        }
        check(noClasses().that().resideInAnyPackage("fairpull.domain..", "fairpull.engine..").should().callMethod(Math.class, "random"));
        check(noClasses().that().resideInAnyPackage("fairpull.domain..", "fairpull.engine..").should()
                .dependOnClassesThat().haveFullyQualifiedName("java.util.Random"));
    }

    @Test
    void librariesStayInTheirRooms() {
        only("fairpull.engine.stats..", "org.apache.commons..");
        only("fairpull.io.json..", "com.fasterxml.jackson..");
        only("fairpull.io.table..", "de.siegmar.fastcsv..");
        only("fairpull.report.write..", "freemarker..");
        only("fairpull.report.write..", "com.openhtmltopdf..");
        only("fairpull.report.write..", "org.apache.pdfbox..");
        only("fairpull.cli..", "picocli..");
        only("fairpull.ui..", "com.formdev..");
        only("fairpull.ui..", "net.miginfocom..");
    }

    @Test
    void onlyTheCommandLinePrints() {
        check(noClasses().that().resideOutsideOfPackage("fairpull.cli..").should(GeneralCodingRules.ACCESS_STANDARD_STREAMS));
    }

    @Test
    void nothingGenericIsThrown() {
        check(GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS);
    }

    @Test
    void noStaticCanChange() {
        check(fields().that().areStatic().should().beFinal());
    }

    @Test
    void domainCannotChange() {
        check(fields().that().areDeclaredInClassesThat().resideInAPackage("fairpull.domain..").should().beFinal());
    }

    @Test
    void recordsOfTheDomainHoldNoArrays() {
        assertThat(program.stream()
                .filter(type -> type.isRecord() && type.getPackageName().startsWith("fairpull.domain"))
                .flatMap(type -> type.getFields().stream())
                .filter(field -> field.getRawType().isArray())
                .map(JavaField::getFullName))
                .isEmpty();
    }

    @Test
    void noPackageIsNamedForNothing() {
        assertThat(program.stream().map(type -> type.getPackageName()).distinct().filter(name -> NAMES_NOTHING.matcher(name).matches()))
                .isEmpty();
    }

    private static void only(String room, String library) {
        check(noClasses().that().resideOutsideOfPackage(room).should().dependOnClassesThat().resideInAPackage(library));
        assertThat(program.stream().filter(type -> type.getPackageName().startsWith(room.replace("..", "")))
                .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
                .anyMatch(dependency -> dependency.getTargetClass().getPackageName().startsWith(library.replace("..", ""))))
                .as("%s uses %s", room, library).isTrue();
    }

    private static void check(ArchRule rule) {
        rule.check(program);
    }
}
