package fairpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The invented tests that come with the project raise no check of their pulls; where one does not apply, the exports lack what it needs. */
class PullsOfDemoTest {
    @ParameterizedTest
    @ValueSource(strings = {"plans/electric-pump", "plans/panel-filter"})
    void noneIsRaised(String test) {
        JsonNode checks = Run.of("judge", test, "--json").json().get("checks");

        assertThat(checks.findValuesAsText("state")).hasSize(17).doesNotContain("raised");
        checks.forEach(check -> assertThat(check.get("state").asText()).as(check.get("code").asText())
                .isEqualTo(check.get("code").asText().startsWith("correction") ? "not applicable" : "clear"));
    }
}
