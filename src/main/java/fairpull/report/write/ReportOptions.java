package fairpull.report.write;

/**
 * What a report shows.
 *
 * @param withoutIdentity whether the names of test, rig, parts and sessions, and the remarks that go with them, are left out
 */
public record ReportOptions(boolean withoutIdentity) {
    /** {@return a report that shows everything} */
    public static ReportOptions full() {
        return new ReportOptions(false);
    }
}
