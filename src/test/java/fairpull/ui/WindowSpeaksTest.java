package fairpull.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import fairpull.app.usecase.conditions.AirCheck;
import fairpull.app.usecase.conditions.HeatCheck;
import fairpull.app.usecase.planning.ExamplePlan;
import fairpull.app.usecase.shelf.ListTests;
import fairpull.app.usecase.shelf.ListedTest;
import fairpull.domain.Remedy.Surface;
import fairpull.domain.air.AirNotice;
import fairpull.domain.heat.HeatNotice;
import fairpull.io.json.RigRecordJson;
import fairpull.io.record.RecordFolder;
import fairpull.report.wording.AirNoticeWords;
import fairpull.report.wording.HeatNoticeWords;
import fairpull.ui.form.FaultWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window says where to click, not what to type into another program's line. */
class WindowSpeaksTest {
    private static final Pattern OF_THE_COMMAND_LINE = Pattern.compile("\\bfairpull [a-z]|(^|[\\s“(])--[a-z]");

    @TempDir
    private Path folder;

    private static void assertOfTheWindow(String said) {
        assertThat(said).isNotBlank().doesNotContainPattern(OF_THE_COMMAND_LINE);
    }

    @Test
    void theCheckSeesWordsOfTheCommandLine() {
        assertThat("add it: fairpull rig add TABLE").containsPattern(OF_THE_COMMAND_LINE);
        assertThat("or give --ambient").containsPattern(OF_THE_COMMAND_LINE);
        assertThat("the page of fairpull; a – b").doesNotContainPattern(OF_THE_COMMAND_LINE);
    }

    @Test
    void noWordOfTheWindowNamesAVerbOrAnOption() throws IOException {
        List<Path> bundles;
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/fairpull/ui"))) {
            bundles = files.filter(file -> file.toString().endsWith(".properties")).toList();
        }
        assertThat(bundles).hasSizeGreaterThan(5);
        for (Path bundle : bundles) {
            Properties words = new Properties();
            try (var reader = Files.newBufferedReader(bundle)) {
                words.load(reader);
            }
            words.forEach((key, text) -> assertThat(text.toString()).as("%s %s", bundle.getFileName(), key)
                    .doesNotContainPattern(OF_THE_COMMAND_LINE));
        }
    }

    @Test
    void whatIsTypedOfHeatIsAnsweredInWordsOfTheWindow() {
        for (HeatCheck.Typed typed : List.of(new HeatCheck.Typed(Optional.empty(), "8", "", ""),
                new HeatCheck.Typed(Optional.empty(), "", "6K", ""), new HeatCheck.Typed(Optional.empty(), "8", "6K", "72C"),
                new HeatCheck.Typed(Optional.empty(), "x", "6K", ""), new HeatCheck.Typed(Optional.empty(), "8", "6 bar", ""),
                new HeatCheck.Typed(Optional.empty(), "0.0001", "6K", ""), new HeatCheck.Typed(Optional.empty(), "8", "6K", "22"),
                new HeatCheck.Typed(Optional.empty(), "8", "6K", ""))) {
            HeatCheck check = HeatCheck.of(ExamplePlan.plan(), typed);
            assertOfTheWindow(check.heading() + " " + String.join(" ", check.sentences()));
        }
        for (HeatNotice.Code code : HeatNotice.Code.values()) {
            assertOfTheWindow(HeatNoticeWords.sentence(HeatNotice.of(code, 300.0, 400.0), Surface.WINDOW));
        }
    }

    @Test
    void whatIsTypedOfTheAirIsAnsweredInWordsOfTheWindow() {
        for (AirCheck.Typed typed : List.of(new AirCheck.Typed("24C", "", "", "", ""), new AirCheck.Typed("", "1003hPa", "40", "", ""),
                new AirCheck.Typed("24C", "1003hPa", "40", "", "24C"), new AirCheck.Typed("24C", "1003hPa", "40", "high", ""),
                new AirCheck.Typed("70C", "1003hPa", "40", "", ""), new AirCheck.Typed("24C", "1003", "40", "", ""),
                new AirCheck.Typed("24C", "850hPa", "40", "1500m", ""), new AirCheck.Typed("24C", "1003hPa", "40", "", ""))) {
            AirCheck check = AirCheck.of(ExamplePlan.plan(), typed);
            assertOfTheWindow(check.decision() + " " + check.text());
        }
        for (AirNotice.Code code : AirNotice.Code.values()) {
            assertOfTheWindow(AirNoticeWords.sentence(new AirNotice(code, List.of(288.15, -0.041, 310.0), false), Surface.WINDOW));
        }
    }

    @Test
    void rigRecordsThatCannotBeReadAreSpokenOfInWordsOfTheWindow() {
        for (Throwable fault : Arrays.asList(catchThrowable(() -> RecordFolder.open(folder.resolve("none"))),
                catchThrowable(() -> RigRecordJson.read("{}", "a.rig.json")),
                catchThrowable(() -> RigRecordJson.read("{\"rigRecordVersion\": 99}", "a.rig.json")),
                catchThrowable(() -> RigRecordJson.read("{\"rigRecordVersion\": 1}", "a.rig.json")))) {
            assertThat(fault).isNotNull();
            assertOfTheWindow(FaultWords.of(fault));
        }
    }

    @Test
    void aListOfTestsSpeaksOfTheWindowToo() throws IOException {
        Path test = CopiedTest.of(Path.of("plans/panel-filter"), folder.resolve("shop/test"));
        Files.writeString(test.resolve("mapping.json"), "{");
        Files.writeString(Files.createDirectories(folder.resolve("shop/other")).resolve("plan.json"), "{}");
        List<ListedTest> told = Collections.synchronizedList(new ArrayList<>());
        var none = fairpull.app.task.Progress.none();
        new ListTests().list(ListTests.find(folder.resolve("shop"), none), told::add, none);
        assertThat(told).hasSize(2).allSatisfy(listed -> assertOfTheWindow(listed.trouble()));
    }
}
