package fairpull.domain.finding;

import fairpull.domain.plan.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The counted pulls of one measure, in the order in which they were run.
 *
 * @param unit the unit of the values; empty where none is known
 * @param covariateNames the names of the rows' covariates
 * @param rows the pulls
 */
public record PullTable(String unit, List<String> covariateNames, List<PullRow> rows) {
    public PullTable {
        covariateNames = List.copyOf(covariateNames);
        rows = List.copyOf(rows);
        Map<String, PullRow> first = new LinkedHashMap<>();
        for (PullRow row : rows) {
            if (row.covariates().size() != covariateNames.size()) {
                throw new IllegalArgumentException("pull " + row.pull() + " of install " + row.install() + " has "
                        + row.covariates().size() + " covariates, the table has " + covariateNames.size());
            }
            PullRow other = first.putIfAbsent(row.install(), row);
            if (other != null && (other.part() != row.part() || !other.session().equals(row.session()))) {
                throw new IllegalArgumentException("install " + row.install() + " has two parts or two sessions");
            }
        }
        for (Part part : Part.values()) {
            if (rows.stream().noneMatch(row -> row.part() == part)) {
                throw new IllegalArgumentException("no pull of part " + part + ": there is nothing to compare");
            }
        }
    }

    /** {@return whether every pull has its time} */
    public boolean hasMinutes() {
        return rows.stream().noneMatch(row -> Double.isNaN(row.minutes()));
    }

    /** {@return the rows of each install, installs in the order in which they first appear} */
    public Map<String, List<PullRow>> byInstall() {
        Map<String, List<PullRow>> installs = new LinkedHashMap<>();
        for (PullRow row : rows) {
            installs.computeIfAbsent(row.install(), label -> new ArrayList<>()).add(row);
        }
        return installs;
    }
}
