package fairpull.domain.search;

import fairpull.domain.day.DayClock;

/**
 * What a day costs: exactly {@code hours × perHour + pulls × perPull + swaps × perSwap + setUp}. Hours run from the start of the set-up
 * to the end of the last interval; pulls are all pulls, warm-ups included; every install after the first is a swap, as the clock has it.
 *
 * @param perHour of the rig
 * @param perPull of a pull: fuel, tyres
 * @param perSwap of a swap: gaskets, fluids
 * @param setUp once
 */
public record Costs(double perHour, double perPull, double perSwap, double setUp) {
    private static final double MINUTES_AN_HOUR = 60;

    public Costs {
        for (double cost : new double[] {perHour, perPull, perSwap, setUp}) {
            if (!(cost >= 0) || Double.isInfinite(cost)) {
                throw new IllegalArgumentException("a cost must be 0 or more, was " + cost);
            }
        }
    }

    /** {@return whether nothing costs anything} */
    public boolean areNone() {
        return perHour == 0 && perPull == 0 && perSwap == 0 && setUp == 0;
    }

    /** {@return the cost of a day} */
    public double of(double minutes, int installs, int pullsPerInstall) {
        return minutes / MINUTES_AN_HOUR * perHour + installs * pullsPerInstall * perPull + (installs - 1) * perSwap + setUp;
    }

    /** {@return the cost of a day by its clock, whose installs may differ in their pulls} */
    public double of(DayClock day) {
        long pulls = day.events().stream().filter(event -> event.kind().isPull()).count();
        return day.minutes() / MINUTES_AN_HOUR * perHour + pulls * perPull + (day.installs().size() - 1) * perSwap + setUp;
    }
}
