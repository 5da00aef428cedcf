package fairpull.report.write;

import fairpull.domain.plan.Plan;
import fairpull.domain.pull.Seal;
import fairpull.report.wording.NoticeWords;
import fairpull.report.wording.SafetyWords;
import fairpull.report.wording.SealWords;
import fairpull.report.wording.SheetWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The run sheet of a test, for a clipboard: black on white, no grey. One page a session where that can be had with lines wide enough to
 * write on; else it flows on, with its head repeated.
 *
 * @param html one HTML page that needs nothing else
 * @param pdf the same as PDF
 */
public record RunSheet(String html, HtmlToPdf.Pdf pdf) {
    /** How close the lines are set, widest first. */
    private enum Setting {
        ROOMY, WIDE, MEDIUM, CLOSE;

        /** A browser that lacks our font takes one that runs wider. */
        Setting forBrowsers() {
            return this == CLOSE ? CLOSE : values()[ordinal() + 1];
        }
    }

    /** {@return the sheet, set as wide as the fewest pages allow} */
    public static RunSheet of(SheetContent content, SheetOptions options) {
        Map<String, Object> page = page(content, options);
        int fewest = content.plan().sequence().sessions().size();
        Setting best = Setting.ROOMY;
        HtmlToPdf.Pdf pdf = pdf(content, page, best);
        for (Setting closer : List.of(Setting.WIDE, Setting.MEDIUM, Setting.CLOSE)) {
            if (pdf.pages() == fewest) {
                break;
            }
            HtmlToPdf.Pdf other = pdf(content, page, closer);
            if (other.pages() < pdf.pages()) {
                best = closer;
                pdf = other;
            }
        }
        return new RunSheet(html(page, best.forBrowsers()), pdf);
    }

    private static HtmlToPdf.Pdf pdf(SheetContent content, Map<String, Object> page, Setting setting) {
        return HtmlToPdf.pdf(html(page, setting), content.seal().map(Seal::at), content.planSha256());
    }

    private static String html(Map<String, Object> page, Setting setting) {
        Map<String, Object> set = new LinkedHashMap<>(page);
        set.put("setting", setting.name().toLowerCase(Locale.ROOT));
        return Templates.filled("sheet.ftlh", set);
    }

    private static Map<String, Object> page(SheetContent content, SheetOptions options) {
        Plan plan = content.plan();
        SheetPages pages = new SheetPages(plan, options);
        Map<String, Object> page = new LinkedHashMap<>();
        page.put("title", plan.title());
        page.put("size", options.paper().size());
        page.put("font", HtmlToPdf.FONT);
        page.put("code", SheetWords.code(content.seal()));
        page.put("sealed", SheetWords.sealed(content.seal()));
        page.put("lodge", SheetWords.lodge(content.seal()));
        page.put("remark", plan.remark());
        page.put("alarms", content.alarms().stream()
                .map(alarm -> NoticeWords.sentence(alarm, plan.question().deciding().unit().symbol())).toList());
        page.put("partA", plan.question().partA());
        page.put("partB", plan.question().partB());
        page.put("deciding", SheetWords.deciding(plan));
        page.put("worthwhile", SheetWords.worthwhile(plan));
        page.put("run", SheetWords.run(plan));
        page.put("gateRule", SheetWords.gates(plan.gates().size(), pages.reference()));
        page.put("checklist", plan.checklist());
        page.put("deferral", SafetyWords.deferral());
        page.put("cautions", SafetyWords.of(plan.rig().kind()));
        page.put("amendmentsHead", SheetWords.amendments(content.amendments().size(), content.seal().isPresent()));
        page.put("amendments", SealWords.amendments(content.plan(), content.amendments()));
        page.put("sheets", pages.pages());
        return page;
    }
}
