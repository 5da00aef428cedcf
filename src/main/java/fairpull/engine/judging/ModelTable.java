package fairpull.engine.judging;

import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Part;
import fairpull.engine.stats.InstallDesign;
import fairpull.engine.stats.OneWay;
import fairpull.engine.stats.ResponseSums;
import fairpull.engine.stats.TimeColumns;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/** A table of pulls as arrays: indices of installs and sessions, and the columns of the model, the part last. */
final class ModelTable {
    private final List<PullRow> rows;
    private final List<PullRow> firstOfInstall = new ArrayList<>();
    private final int[] install;
    private final int[] sessionOfInstall;
    private final double[] values;
    private final List<double[]> columns = new ArrayList<>();
    private final List<double[]> columnsOfMeans = new ArrayList<>();
    private final OptionalInt driftColumn;
    private final int sessions;
    private final InstallDesign design;
    private final InstallDesign designOfMeans;

    private ModelTable(List<PullRow> rows, JudgeSettings settings, List<Integer> covariates) {
        this.rows = rows;
        install = new int[rows.size()];
        int[] session = new int[rows.size()];
        Map<String, Integer> installs = new LinkedHashMap<>();
        Map<String, Integer> sessionNames = new LinkedHashMap<>();
        for (int k = 0; k < rows.size(); k++) {
            PullRow row = rows.get(k);
            session[k] = sessionNames.computeIfAbsent(row.session(), name -> sessionNames.size());
            if (!installs.containsKey(row.install())) {
                firstOfInstall.add(row);
            }
            install[k] = installs.computeIfAbsent(row.install(), name -> installs.size());
        }
        sessions = sessionNames.size();
        values = rows.stream().mapToDouble(PullRow::value).toArray();
        sessionOfInstall = firstOfInstall.stream().mapToInt(row -> sessionNames.get(row.session())).toArray();
        columns.addAll(TimeColumns.sessions(session));
        driftColumn = settings.drift() == Drift.NONE ? OptionalInt.empty() : OptionalInt.of(columns.size());
        columns.addAll(TimeColumns.drift(session, column(PullRow::minutes), settings.drift().terms()));
        columnsOfMeans.addAll(columns);
        for (int covariate : covariates) {
            columns.add(OneWay.of(new int[rows.size()], column(row -> row.covariates().get(covariate))).deviations());
        }
        double[] part = column(row -> row.part() == Part.B ? 1 : 0);
        columns.add(part);
        columnsOfMeans.add(part);
        design = InstallDesign.of(install, columns);
        designOfMeans = InstallDesign.ofMeans(install, columnsOfMeans);
    }

    /**
     * The arrays of a table.
     *
     * @throws IllegalArgumentException if the settings ask for a covariate or minutes that the table does not have
     */
    static ModelTable of(PullTable table, JudgeSettings settings) {
        if (settings.drift() != Drift.NONE && !table.hasMinutes()) {
            throw new IllegalArgumentException("drift is to be modelled, but not every pull has its minutes");
        }
        return new ModelTable(table.rows(), settings, covariates(table, settings));
    }

    private static List<Integer> covariates(PullTable table, JudgeSettings settings) {
        List<Integer> indices = new ArrayList<>();
        for (String name : settings.covariates()) {
            int index = table.covariateNames().indexOf(name);
            if (index < 0) {
                throw new IllegalArgumentException("the table has no covariate " + name);
            }
            if (table.rows().stream().anyMatch(row -> !Double.isFinite(row.covariates().get(index)))) {
                throw new IllegalArgumentException("covariate " + name + " is not known for every pull");
            }
            indices.add(index);
        }
        return indices;
    }

    private double[] column(ToDoubleFunction<PullRow> figure) {
        return rows.stream().mapToDouble(figure).toArray();
    }

    /** Whether B − A can be told apart from sessions, drift and covariates. */
    boolean changeEstimable() {
        return design.estimable(partColumn());
    }

    boolean changeEstimableOnMeans() {
        return designOfMeans.estimable(partColumnOfMeans());
    }

    /** Installs less the rank of their mean design: sessions, part, drift; covariates do not count. */
    int installDegreesOfFreedom() {
        return designOfMeans.installs() - designOfMeans.rank();
    }

    /** Pulls less the rank of the whole design. */
    int pullDegreesOfFreedom() {
        return design.pulls() - design.rank();
    }

    /** Whether all pulls of every install are equal to the last digit, where some install has several. */
    boolean pullsIdentical() {
        for (int k = 0; k < values.length; k++) {
            if (values[k] != firstOfInstall.get(install[k]).value()) {
                return false;
            }
        }
        return design.pulls() > design.installs();
    }

    boolean onePullPerInstall() {
        return design.pulls() == design.installs();
    }

    boolean equalPulls() {
        return design.equalPulls().isPresent();
    }

    ResponseSums sums() {
        return design.sumsOf(values);
    }

    /** Install means regressed on sessions, drift and part. */
    ResponseSums sumsOfMeans() {
        return designOfMeans.sumsOf(oneWay().means());
    }

    /** Install means regressed on all columns of the model, covariates too. */
    ResponseSums sumsOfMeansWithCovariates() {
        return InstallDesign.ofMeans(install, columns).sumsOf(oneWay().means());
    }

    OneWay oneWay() {
        return OneWay.of(install, values);
    }

    int partColumn() {
        return columns.size() - 1;
    }

    int partColumnOfMeans() {
        return columnsOfMeans.size() - 1;
    }

    /** Index of the linear drift term, where drift is modelled and can be told apart. */
    OptionalInt driftColumn() {
        return driftColumn.isPresent() && design.estimable(driftColumn.getAsInt()) ? driftColumn : OptionalInt.empty();
    }

    int sessions() {
        return sessions;
    }

    int[] sessionOfInstall() {
        return sessionOfInstall.clone();
    }

    boolean[] installIsB() {
        boolean[] isB = new boolean[firstOfInstall.size()];
        for (int i = 0; i < isB.length; i++) {
            isB[i] = firstOfInstall.get(i).part() == Part.B;
        }
        return isB;
    }

    /** The first row of each install, in the order in which the installs were run. */
    List<PullRow> firstOfInstall() {
        return firstOfInstall;
    }

    int installOf(int pull) {
        return install[pull];
    }

    List<PullRow> rows() {
        return rows;
    }
}
