package fairpull.report.write;

import fairpull.report.wording.Said;
import java.util.List;

/**
 * The sheet of one session, as the template takes it.
 *
 * @param session its name
 * @param date the day; empty where it is a field to fill
 * @param span from when to when it goes
 * @param gates limits in words, each with a field for the reference reading where the limit hangs on one
 * @param rows installs side by side, in the order in which they are run
 * @param checklistBeside whether the checklist stands beside the last install, where there is room
 * @param remarkLines lines for remarks beside the last install
 */
public record SheetPage(String session, String date, String span, List<GateLine> gates, List<List<Block>> rows,
        boolean checklistBeside, int remarkLines) {
    public SheetPage {
        gates = List.copyOf(gates);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /**
     * A gate.
     *
     * @param condition what is read
     * @param limit its limit
     * @param unit the unit of the reading of the reference pull; empty where the limit needs none
     */
    public record GateLine(String condition, String limit, String unit) {
    }

    /**
     * An install, or as much of it as goes in one block.
     *
     * @param label such as {@code A1}
     * @param continued whether its first pulls stand in an earlier block
     * @param part A or B
     * @param partWords what is fitted
     * @param before the work before its pulls, and when it begins
     * @param fields what is written down once an install
     * @param columns what is written down at every pull
     * @param pulls in the order in which they are run
     */
    public record Block(String label, boolean continued, String part, String partWords, String before, List<String> fields,
            List<Said> columns, List<Line> pulls) {
        public Block {
            fields = List.copyOf(fields);
            columns = List.copyOf(columns);
            pulls = List.copyOf(pulls);
        }
    }

    /**
     * A pull, or a break between two.
     *
     * @param pull which one; empty for a break
     * @param warmUp whether it never counts
     * @param time when it begins
     * @param remark what is printed among the remarks, or of the break
     */
    public record Line(String pull, boolean warmUp, String time, String remark) {
    }
}
