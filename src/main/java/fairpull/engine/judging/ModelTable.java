package fairpull.engine.judging;

import fairpull.domain.finding.JudgeSettings;
import fairpull.domain.finding.PullRow;
import fairpull.domain.finding.PullTable;
import fairpull.domain.plan.Drift;
import fairpull.domain.plan.Part;
import fairpull.engine.stats.EqualPulls;
import fairpull.engine.stats.InstallDesign;
import fairpull.engine.stats.OneWay;
import fairpull.engine.stats.ResponseSums;
import fairpull.engine.stats.TimeColumns;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** A table of pulls as arrays: indices of installs and sessions, and the columns of the model, the part last. */
final class ModelTable {
    private final List<PullRow> rows;
    private final List<PullRow> firstOfInstall;
    private final int[] install;
    private final int[] session;
    private final double[] values;
    private final List<double[]> columnsOfMeans;
    private final OptionalInt driftColumn;
    private final int partColumn;
    private final InstallDesign design;
    private final InstallDesign designOfMeans;
    private final OneWay oneWay;

    private ModelTable(List<PullRow> rows, JudgeSettings settings, List<Integer> covariates) {
        this.rows = rows;
        install = index(rows, PullRow::install);
        session = index(rows, PullRow::session);
        values = column(PullRow::value);
        oneWay = OneWay.of(install, values);
        firstOfInstall = firstOfInstall();
        List<double[]> columns = new ArrayList<>(TimeColumns.sessions(session));
        driftColumn = settings.drift() == Drift.NONE ? OptionalInt.empty() : OptionalInt.of(columns.size());
        columns.addAll(TimeColumns.drift(session, column(PullRow::minutes), settings.drift().terms()));
        columnsOfMeans = new ArrayList<>(columns);
        for (int covariate : covariates) {
            columns.add(OneWay.of(new int[rows.size()], column(row -> row.covariates().get(covariate))).deviations());
        }
        partColumn = columns.size();
        columns.add(column(row -> row.part() == Part.B ? 1 : 0));
        columnsOfMeans.add(columns.get(partColumn));
        design = InstallDesign.of(install, columns);
        designOfMeans = InstallDesign.ofMeans(install, columnsOfMeans);
    }

    /** The table without one pull of an install that has others; the clock keeps its origin. */
    private ModelTable(ModelTable whole, int pull, InstallDesign design) {
        rows = new ArrayList<>(whole.rows);
        rows.remove(pull);
        install = without(whole.install, pull);
        session = without(whole.session, pull);
        values = column(PullRow::value);
        oneWay = OneWay.of(install, values);
        firstOfInstall = firstOfInstall();
        driftColumn = whole.driftColumn;
        partColumn = whole.partColumn;
        this.design = design;
        columnsOfMeans = new ArrayList<>();
        for (double[] column : whole.columnsOfMeans) {
            double[] shorter = Arrays.copyOf(column, column.length - 1);
            System.arraycopy(column, pull + 1, shorter, pull, shorter.length - pull);
            columnsOfMeans.add(shorter);
        }
        // without drift the columns of the means are the same whichever pulls they are taken over
        designOfMeans = driftColumn.isEmpty() ? whole.designOfMeans : InstallDesign.ofMeans(install, columnsOfMeans);
    }

    /** The same pulls with other values: the rows only name the pulls then, what they hold of values is not looked at. */
    private ModelTable(ModelTable layout, double[] values) {
        rows = layout.rows;
        firstOfInstall = layout.firstOfInstall;
        install = layout.install;
        session = layout.session;
        this.values = values;
        columnsOfMeans = layout.columnsOfMeans;
        driftColumn = layout.driftColumn;
        partColumn = layout.partColumn;
        design = layout.design;
        designOfMeans = layout.designOfMeans;
        oneWay = OneWay.of(install, values);
    }

    ModelTable withValues(double[] others) {
        return new ModelTable(this, others);
    }

    private static int[] without(int[] index, int pull) {
        return IntStream.range(0, index.length).filter(k -> k != pull).map(k -> index[k]).toArray();
    }

    private static int[] index(List<PullRow> rows, Function<PullRow, String> name) {
        Map<String, Integer> seen = new HashMap<>();
        return rows.stream().mapToInt(row -> seen.computeIfAbsent(name.apply(row), ignored -> seen.size())).toArray();
    }

    private List<PullRow> firstOfInstall() {
        PullRow[] first = new PullRow[oneWay.sizes().length];
        for (int k = rows.size() - 1; k >= 0; k--) {
            first[install[k]] = rows.get(k);
        }
        return List.of(first);
    }

    /**
     * This table without one pull, in a fraction of the time that it takes to build it anew.
     *
     * @return the table; empty where it has to be built anew: the pull is alone, or the bend of several sessions moves with the clock
     */
    Optional<ModelTable> without(int pull, Drift drift) {
        if (drift == Drift.QUADRATIC && sessions() > 1) {
            return Optional.empty();
        }
        return design.without(pull).map(rest -> new ModelTable(this, pull, rest));
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

    /**
     * Refuses a table in which B − A cannot be told.
     *
     * @throws IllegalArgumentException if one of sessions, drift or covariates runs along with the part
     */
    void requireChangeEstimable() {
        if (!changeEstimable()) {
            throw new IllegalArgumentException(
                    "the change B − A cannot be told apart from sessions, drift or covariates: one of them runs along with the part");
        }
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
        double[] anyOfInstall = new double[design.installs()];
        for (int k = 0; k < values.length; k++) {
            anyOfInstall[install[k]] = values[k];
        }
        for (int k = 0; k < values.length; k++) {
            if (values[k] != anyOfInstall[install[k]]) {
                return false;
            }
        }
        return design.pulls() > design.installs();
    }

    int pulls() {
        return design.pulls();
    }

    /** The closed form for equal pulls, where the design has one. */
    Optional<EqualPulls> closedForm() {
        return EqualPulls.of(design, designOfMeans, partColumnOfMeans());
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
        return designOfMeans.sumsOf(oneWay.means());
    }

    /** Install means regressed on all columns of the model, covariates too. */
    ResponseSums sumsOfMeansWithCovariates() {
        return design.ofMeans().sumsOf(oneWay.means());
    }

    /** What all columns leave over of each pull, less its install's mean. */
    double[] residualsWithin() {
        return OneWay.of(install, design.residuals(values)).deviations();
    }

    /** What sessions, drift and part leave over of each install mean. */
    double[] residualsOfMeans() {
        return designOfMeans.residuals(oneWay.means());
    }

    OneWay oneWay() {
        return oneWay;
    }

    int partColumn() {
        return partColumn;
    }

    int partColumnOfMeans() {
        return columnsOfMeans.size() - 1;
    }

    /** Index of the linear drift term, where drift is modelled and can be told apart. */
    OptionalInt driftColumn() {
        return driftColumn.isPresent() && design.estimable(driftColumn.getAsInt()) ? driftColumn : OptionalInt.empty();
    }

    int sessions() {
        return Arrays.stream(session).max().orElse(-1) + 1;
    }

    int[] sessionOfInstall() {
        int[] sessions = new int[firstOfInstall.size()];
        for (int k = 0; k < install.length; k++) {
            sessions[install[k]] = session[k];
        }
        return sessions;
    }

    boolean[] installIsB() {
        boolean[] isB = new boolean[firstOfInstall.size()];
        for (int i = 0; i < isB.length; i++) {
            isB[i] = firstOfInstall.get(i).part() == Part.B;
        }
        return isB;
    }

    /** The first row of each install, in the order in which the installs were run. */
    List<PullRow> installs() {
        return firstOfInstall;
    }

    int installOf(int pull) {
        return install[pull];
    }

    List<PullRow> rows() {
        return rows;
    }
}
