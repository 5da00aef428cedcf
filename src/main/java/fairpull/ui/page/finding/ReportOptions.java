package fairpull.ui.page.finding;

import fairpull.app.document.Settings;
import java.util.List;
import java.util.Locale;

/** What the window remembers of how findings are written. */
public final class ReportOptions {
    static final String PAPER = "report.paper";
    static final String IDENTITY = "report.withoutIdentity";
    static final List<String> PAPERS = List.of("a4", "letter");
    private static final List<String> LETTER_COUNTRIES = List.of("US", "CA", "MX");

    private ReportOptions() {
    }

    /** {@return the paper: as chosen last, else as the country has it} */
    public static String paper(Settings settings) {
        return settings.find(PAPER).filter(PAPERS::contains)
                .orElse(LETTER_COUNTRIES.contains(Locale.getDefault().getCountry()) ? "letter" : "a4");
    }

    /** {@return whether what identifies customer, car and shop is left out} */
    public static boolean withoutIdentity(Settings settings) {
        return settings.find(IDENTITY).filter("true"::equals).isPresent();
    }
}
