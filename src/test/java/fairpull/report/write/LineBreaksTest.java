package fairpull.report.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where lines of a page may end. */
class LineBreaksTest {
    @Test
    void aNumberKeepsTogetherWithItsSignAndUnit() {
        assertThat(parts("at worst ±5.0\u00a0hp; rounding −0.041\u00a0hp")).containsExactly("at ", "worst ", "±5.0\u00a0hp; ", "rounding ",
                "−0.041\u00a0hp");
        assertThat(parts("3000-6500\u00a0rpm on 2025-12-14, 1,250.5")).containsExactly("3000-6500\u00a0rpm ", "on ", "2025-12-14, ", "1,250.5");
    }

    @Test
    void wordsPartAsTheyDid() {
        assertThat(parts("of well-kept days")).containsExactly("of ", "well-", "kept ", "days");
        assertThat(parts("")).isEmpty();
    }

    private static List<String> parts(String text) {
        LineBreaks breaks = new LineBreaks();
        breaks.setText(text);
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int to = breaks.next(); to >= 0; to = breaks.next()) {
            if (to > from) {
                parts.add(text.substring(from, to));
            }
            from = to;
        }
        return parts;
    }
}
