package fairpull.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import fairpull.app.usecase.judging.JudgeFolder;
import fairpull.domain.finding.Judgement;
import fairpull.domain.finding.Notice;
import fairpull.domain.finding.Worthwhile;
import fairpull.io.json.PlanJson;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example tests in {@code plans}: what the generator writes, valid by the schema, and ending as the README says. */
class DemoPlansTest {
    private static final Path PLANS = Path.of("plans");

    @Test
    void plansAreByteForByteWhatTheGeneratorWrites(@TempDir Path folder) throws IOException {
        DemoPlans.write(Path.of("demo-data"), folder);

        assertThat(contents(folder)).isNotEmpty().isEqualTo(contents(PLANS));
    }

    @Test
    void everyPlanIsValidByTheSchemaThatShipsWithTheProgram() throws IOException {
        List<Path> plans;
        try (Stream<Path> files = Files.walk(PLANS)) {
            plans = files.filter(file -> file.getFileName().toString().equals("plan.json")).toList();
        }

        assertThat(plans).hasSizeGreaterThanOrEqualTo(2).allSatisfy(plan -> assertThat(PlanSchema.errors(Files.readString(plan))).isEmpty());
    }

    @Test
    void theSchemaRefusesWhatTheProgramRefuses() throws IOException {
        JsonNode plan = new ObjectMapper().readTree(Files.readString(PLANS.resolve("electric-pump/plan.json")));
        String unknownField = plan.toString().replaceFirst("\\{", "{\"colour\":\"red\",");
        String noPulls = plan.toString().replaceFirst("\"countedPulls\":\\d+", "\"countedPulls\":0");

        assertThat(PlanSchema.errors(unknownField)).isNotEmpty();
        assertThat(PlanSchema.errors(noPulls)).isNotEmpty();
    }

    @Test
    void workingHoursAreValidByTheSchemaAndReadBack() throws IOException {
        String plan = Files.readString(PLANS.resolve("electric-pump/plan.json"));
        String hours = "\"hours\":{\"start\":\"09:00\",\"end\":\"17:00\",\"breaks\":[{\"start\":\"12:30\",\"lengthS\":2700}]},";
        String withHours = plan.replaceFirst("(\"sessions\"\\s*:\\s*\\[\\s*\\{)", "$1" + hours);

        assertThat(PlanSchema.errors(withHours)).isEmpty();
        assertThat(PlanSchema.errors(withHours.replace("09:00", "9 am"))).isNotEmpty();
        String canonical = PlanJson.canonical(PlanJson.read(withHours, "plan.json"));
        assertThat(canonical).contains("\"hours\":{\"breaks\":[{\"lengthS\":2700,\"start\":\"12:30\"}],\"end\":\"17:00\",\"start\":\"09:00\"}");
        assertThat(PlanJson.canonical(PlanJson.read(canonical, "plan.json"))).isEqualTo(canonical);
    }

    @Test
    void curveSettingsAreValidByTheSchemaAndReadBack() throws IOException {
        String plan = Files.readString(PLANS.resolve("electric-pump/plan.json"));
        String curve = "\"curve\":{\"bandwidthRadPerS\":10,\"grid\":{\"fromRadPerS\":300,\"stepRadPerS\":5,\"toRadPerS\":600}}";
        String smoothed = plan.replaceFirst("\\{", "{" + curve + ",");

        assertThat(PlanSchema.errors(smoothed)).isEmpty();
        assertThat(PlanSchema.errors(smoothed.replace("\"bandwidthRadPerS\":10", "\"bandwidthRadPerS\":0"))).isNotEmpty();
        assertThat(PlanJson.canonical(PlanJson.read(smoothed, "plan.json"))).contains(curve);
        assertThatThrownBy(() -> PlanJson.read(smoothed.replace(":600", ":301"), "plan.json")).hasMessageContaining("room for one step");
    }

    @Test
    void aScoredWindowAMovingMassAndAResponseAreValidByTheSchemaAndReadBack() throws IOException {
        String plan = Files.readString(PLANS.resolve("electric-pump/plan.json"));
        String scored = "\"curve\":{\"scored\":{\"liftOffS\":0.2,\"tipInRadPerS\":31,\"tipInS\":0.5}}";
        String mass = "\"movingMass\":{\"coastDown\":{\"f0N\":110,\"f1NsPerM\":-0.9,\"f2Ns2PerM2\":0.42,\"uncertaintyF0N\":8,"
                + "\"uncertaintyF1NsPerM\":0,\"uncertaintyF2Ns2PerM2\":0.01},\"massKg\":1480,\"massUncertaintyKg\":15,\"windowS\":0.5}";
        String response = "{\"better\":\"less\",\"correction\":\"none\",\"definition\":{\"kind\":\"response\",\"of\":\"torque\",\"share\":0.9},"
                + "\"name\":\"response\",\"unit\":\"s\"}";
        String full = plan.replaceFirst("\\{", "{" + scored + ",").replaceFirst("(\"rig\"\\s*:\\s*\\{)", "$1" + mass + ",")
                .replaceFirst("(\"further\"\\s*:\\s*\\[)[^\\]]*", "$1" + response);

        assertThat(PlanSchema.errors(full)).isEmpty();
        assertThat(PlanSchema.errors(full.replace("\"share\":0.9", "\"share\":1"))).isNotEmpty();
        assertThat(PlanSchema.errors(full.replace("\"tipInRadPerS\":31", "\"tipInRadPerS\":0"))).isNotEmpty();
        assertThat(PlanSchema.errors(plan.replaceFirst("\\{", "{\"curve\":{},"))).isNotEmpty();
        assertThat(PlanJson.canonical(PlanJson.read(full, "plan.json"))).contains(scored, mass, response);
        assertThatThrownBy(() -> PlanJson.read(full.replace("\"windowS\":0.5", "\"windowS\":0"), "plan.json"))
                .hasMessageContaining("window of the acceleration");
    }

    @Test
    void theCanonicalPlanIsSortedAndReadsBackToItself() throws IOException {
        String canonical = PlanJson.canonical(PlanJson.read(Files.readString(PLANS.resolve("electric-pump/plan.json")), "plan.json"));

        assertThat(canonical).startsWith("{\"analysis\":{\"covariates\":[],\"drift\":\"linear\"}").doesNotContain("\n", "\": ", "E+", "E-");
        assertThat(PlanJson.canonical(PlanJson.read(canonical, "plan.json"))).isEqualTo(canonical);
        assertThat(keysInOrder(new ObjectMapper().readTree(canonical))).isTrue();
    }

    @Test
    void theFirstTestEndsAsAWorthwhileGain() throws IOException {
        Judgement judgement = JudgeFolder.judge(PLANS.resolve("electric-pump"));

        assertThat(judgement.deciding().verdict().words()).isEqualTo("gain");
        assertThat(judgement.deciding().worthwhile()).contains(Worthwhile.YES);
        assertThat(judgement.notices()).extracting(Notice::code).containsExactlyInAnyOrder(Notice.Code.NO_RECORD_FOR_MEASURE,
                Notice.Code.GATES_NOT_READ, Notice.Code.LOG_STATE, Notice.Code.PULLS_ABORTED);
    }

    @Test
    void theSecondTestEndsUndecidedThoughPullsTakenForIndependentWouldSayGain() throws IOException {
        Judgement judgement = JudgeFolder.judge(PLANS.resolve("panel-filter"));

        assertThat(judgement.deciding().verdict().words()).isEqualTo("undecided");
        assertThat(NaivePulls.pValue(judgement)).isLessThan(0.05);
    }

    private static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(folder.relativize(file).toString().replace('\\', '/'), new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return contents;
    }

    private static boolean keysInOrder(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        for (JsonNode child : node) {
            if (!keysInOrder(child)) {
                return false;
            }
        }
        return names.equals(names.stream().sorted().toList());
    }

    /** The schema, out of the program's own resources. */
    private static final class PlanSchema {
        static List<String> errors(String plan) throws IOException {
            try (InputStream in = PlanJson.class.getResourceAsStream("/fairpull/schema/plan.schema.json")) {
                String schema = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(schema).validate(plan, InputFormat.JSON).stream().map(Object::toString).toList();
            }
        }
    }
}
