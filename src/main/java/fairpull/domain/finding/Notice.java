package fairpull.domain.finding;

import java.util.List;

/**
 * Something a reader must know about a finding: a code and the figures that belong to it. Words are made elsewhere.
 *
 * @param code what is noticed
 * @param figures numbers of the notice, in the order its code documents
 * @param names names of the notice (installs, pulls, files), in the order its code documents
 */
public record Notice(Code code, List<Double> figures, List<String> names) {
    /** What can be noticed. */
    public enum Code {
        /** Refit scatter came out as zero: not estimable from these data. */
        REFIT_SCATTER_NOT_SEEN(Severity.INFORMATION),
        /** Pulls per install differ; the agreement rule applies. Figures: fewest, most. */
        UNEQUAL_PULLS(Severity.INFORMATION),
        /** Never back at A after B: drift is not excluded. */
        NO_RETURN_TO_A(Severity.WARNING),
        /** The data scatter more than the record says. Figures: F, p. */
        RECORD_TOO_SMALL(Severity.WARNING),
        /** The last A does not agree with the first. Figures: difference, low, high, level. */
        DID_NOT_COME_BACK(Severity.WARNING),
        /** Pulls far from their install's mean. Names: install and pull, in pairs joined by a blank. */
        OUTLIERS(Severity.WARNING),
        /** One pull decides. Names: those without which the verdict is another. */
        ONE_PULL_DECIDES(Severity.WARNING),
        /** One install decides. Names: those without which the verdict is another. */
        ONE_INSTALL_DECIDES(Severity.WARNING),
        /** All pulls within each install are equal to the last digit. */
        PULLS_IDENTICAL(Severity.WARNING),
        /** Both scatters taken as known: normal limit. */
        SCATTER_TAKEN_AS_KNOWN(Severity.INFORMATION),
        /** Minutes of the pulls come from the plan, not from the day. */
        PLANNED_CLOCK_USED(Severity.WARNING),
        /** It is not known whether imported values are already corrected. */
        CORRECTION_UNKNOWN(Severity.WARNING),
        /** Values were brought to the plan's standard by the air noted. Figures: least, largest multiplier. Names: pulls. */
        CORRECTED_HERE(Severity.INFORMATION),
        /** Readings were carried from earlier pulls. Figures: how many pulls, oldest age in minutes, ages by the planned clock. */
        AIR_CARRIED(Severity.INFORMATION),
        /** Carried readings older than is sensible. Figures: the limit in minutes. Names: pulls. */
        AIR_CARRIED_LONG(Severity.WARNING),
        /** How the factor went under either part. Figures: least and largest under A, least and largest under B. */
        FACTOR_SPREAD(Severity.INFORMATION),
        /** The factor steps by more than 0.5 % from the pull before. Figures: the largest step (share). Names: pulls. */
        FACTOR_STEP(Severity.WARNING),
        /** The factor leaves the range in which it may be used. Figures: low, high. Names: pulls. */
        FACTOR_OUTSIDE(Severity.WARNING),
        /** No seal: the plan could have been made after the data. */
        NOT_SEALED(Severity.WARNING),
        /** Sealed only after data had come in: the plan could have been made to fit them. */
        SEALED_AFTER_DATA(Severity.WARNING),
        /** Sealed more than once. Figures: how often. */
        SEALED_AGAIN(Severity.WARNING),
        /** The plan differs from the sealed one with no amendment that says so. */
        PLAN_CHANGED_BY_HAND(Severity.ALARM),
        /** The seal file does not belong to the log. */
        SEAL_CHANGED_BY_HAND(Severity.ALARM),
        /** The log's chain is broken. Figures: number of the first entry that does not follow. */
        LOG_CHANGED_BY_HAND(Severity.ALARM),
        /** A raw export is not the one that was imported. Names: files. */
        EXPORT_CHANGED_BY_HAND(Severity.ALARM),
        /** A mapping is not the one that was used at import. Names: pulls. */
        MAPPING_CHANGED_BY_HAND(Severity.ALARM),
        /** Planned pulls that never came. Names: pulls. */
        PULLS_MISSING(Severity.WARNING),
        /** Planned pulls that are not in while the day is under way. Names: pulls. */
        PULLS_AWAITED(Severity.WARNING),
        /** Pulls left out, with the verdict that would stand with them. Names: pulls. */
        PULLS_EXCLUDED(Severity.INFORMATION),
        /** Exports that were read anew after they had come in, with other columns or units. Names: pulls with their reasons. */
        PULLS_READ_ANEW(Severity.WARNING),
        /** Amendments made after the first data. Figures: how many. */
        AMENDED_AFTER_DATA(Severity.WARNING),
        /** No rig record for a further measure: it is judged by its own data. Names: measures. */
        NO_RECORD_FOR_MEASURE(Severity.INFORMATION),
        /** Scatter figures that the judgement leans on are a starting guess, no record of any rig. */
        STARTING_GUESS_USED(Severity.WARNING),
        /** A further measure without enough values to be judged. Names: measures. */
        MEASURE_NOT_SEEN(Severity.WARNING),
        /** Gates that did not hold. Names: pulls. */
        GATES_BROKEN(Severity.WARNING),
        /** The day was ended before all of its pulls were run. Names: why. */
        DAY_ENDED_EARLY(Severity.WARNING),
        /** Judged while the day is under way and no look is planned there. Figures: counted pulls that came in, planned. */
        DAY_NOT_OVER(Severity.WARNING),
        /** One of several planned looks. Figures: number, planned, its level, error rate of all together. */
        LOOK_APPLIED(Severity.INFORMATION),
        /** Looked at where no look is planned; the level is the strictest of those planned. Figures: installs, level. */
        LOOK_NOT_PLANNED(Severity.WARNING),
        /** Looked at without a word in the log. Figures: number. */
        LOOK_NOT_LOGGED(Severity.WARNING),
        /** The log names looks that the plan does not have. Figures: looks logged, planned, those not planned. */
        LOOKED_TOO_OFTEN(Severity.WARNING),
        /** Of a plan: a look that cannot be judged by own data. Figures: installs of the look, installs needed. */
        PLAN_LOOK_TOO_EARLY(Severity.WARNING),
        /** Of a plan: a look before the end with one or two degrees of freedom. Figures: installs, df, chance of a gain there if known. */
        PLAN_LOOK_DECIDES_LITTLE(Severity.WARNING),
        /** Of a plan: a look before the end with few degrees of freedom, where the level is kept only nearly. Figures: installs, df. */
        PLAN_LOOK_APPROXIMATE(Severity.INFORMATION),
        /** Pulls that started before the seal was set: the plan could have been made to fit them. Names: pulls. */
        PULLS_BEFORE_SEAL(Severity.WARNING),
        /** The order is said to be drawn, but its seed draws another one. */
        ORDER_NOT_DRAWN(Severity.WARNING),
        /** The clock contradicts the order of installs. Names: installs that began before the one before them was done. */
        CLOCK_CONTRADICTS_ORDER(Severity.WARNING),
        /** Gates that could not be held against anything. Names: conditions never noted. */
        GATES_NOT_READ(Severity.WARNING),
        /** Pulls begun and not finished. Names: pulls with their reasons. */
        PULLS_ABORTED(Severity.WARNING),
        /** Entries of the log that were taken back. Names: what they said. */
        ENTRIES_TAKEN_BACK(Severity.WARNING),
        /** Values further than half the expected level from it. Names: pulls. */
        FAR_FROM_EXPECTED(Severity.WARNING),
        /** An unfinished line stands at the end of the log. */
        LOG_CUT_SHORT(Severity.WARNING),
        /** Files among the exports of which the log knows nothing. Names: files. */
        EXPORT_NOT_IN_LOG(Severity.WARNING),
        /** How long the log is and what it ends in. Figures: entries. Names: the code of its last line. */
        LOG_STATE(Severity.INFORMATION),
        /** A mixed-up unit explains power ÷ (torque × engine speed). Figures: that ratio. Names: pulls (read as → likely is). */
        UNITS_MIXED_UP(Severity.WARNING),
        /**
         * Power is not torque × engine speed. Figures: the ratio if it is constant, the offset in W if that is (NaN otherwise), the worst
         * disagreement (share), at which rad/s. Names: pulls.
         */
        POWER_NOT_TORQUE_TIMES_SPEED(Severity.WARNING),
        /** Corrected over uncorrected power is the square of the factor. Figures: ratio, factor. Names: pulls. */
        CORRECTION_TWICE(Severity.WARNING),
        /** Corrected power is the uncorrected one. Figures: ratio, factor. Names: pulls. */
        CORRECTION_NOT_APPLIED(Severity.WARNING),
        /** Neighbouring pulls differ by the factor. Figures: factor. Names: pairs of pulls. */
        CORRECTION_STEP(Severity.WARNING),
        /** Equal values in a run at the top. Figures: longest run (rows), the value in the unit of the export. Names: pulls. */
        PLATEAU(Severity.WARNING),
        /** A time in a file is not later than the one before it. Figures: most such rows in a file. Names: pulls. */
        TIME_NOT_RISING(Severity.WARNING),
        /** Values that no engine and no roller gives. Figures: the largest over the largest that is believed. Names: pulls. */
        VALUES_IMPLAUSIBLE(Severity.WARNING),
        /** The sweep leaves out part of the deciding band. Figures: rad/s missing, low end of the band, high end. Names: pulls. */
        BAND_NOT_COVERED(Severity.WARNING),
        /** Too few samples in the deciding band. Figures: samples, longest gap in rad/s. Names: pulls. */
        BAND_SPARSE(Severity.WARNING),
        /** Throttle below full within the sweep that is scored. Figures: lowest (share). Names: pulls. */
        THROTTLE_NOT_FULL(Severity.WARNING),
        /** Power or torque collapses in the last rows of the sweep. Figures: fall (share), at which rad/s. Names: pulls. */
        POWER_COLLAPSES(Severity.WARNING),
        /** Single values far from their neighbours. Figures: most in a pull, the largest (share of the value), its rad/s. Names: pulls. */
        SPIKES(Severity.WARNING),
        /** Pulls hold the same numbers. Figures: how many. Names: later = earlier. */
        NUMBERS_REPEATED(Severity.WARNING),
        /** A pull is a multiple of another. Figures: the first factor. Names: later = earlier. */
        PULL_IS_MULTIPLE(Severity.WARNING),
        /** A stretch stands in two pulls. Figures: rows of the longest. Names: later = earlier. */
        STRETCH_COPIED(Severity.WARNING),
        /** Pulls that started before the one ahead of them in their install. Figures: how many. Names: pulls. */
        STARTS_OUT_OF_ORDER(Severity.WARNING),
        /** No sweep at full throttle in the log. Names: pulls. */
        SWEEP_NOT_FOUND(Severity.WARNING),
        /** Several sweeps in one log. Names: pulls. */
        SWEEPS_SEVERAL(Severity.WARNING),
        /** The largest steady throttle falls short of the reference pull's. Figures: smallest, largest share of it. Names: pulls. */
        THROTTLE_NEVER_FULL(Severity.WARNING),
        /** Engine speed over roller or car speed varies within a sweep. Figures: smallest, largest spread (share). Names: pulls. */
        SLIP(Severity.WARNING),
        /** Engine speed over roller or car speed steps. Names: pulls. */
        GEAR_CHANGED(Severity.WARNING),
        /** That ratio differs from the reference pull's. Figures: smallest, largest difference (share). Names: pulls. */
        SPEED_RATIO_DIFFERS(Severity.WARNING),
        /** The sweep rate differs from the reference pull's. Figures: smallest, largest difference (share). Names: pulls. */
        SWEEP_RATE_DIFFERS(Severity.WARNING),
        /** Power out of speed and time. Figures: mass (kg), window (s), largest relative standard uncertainty. Names: pulls. */
        POWER_FROM_MOTION(Severity.INFORMATION),
        /** Of a plan: without a rig record so few installs cannot be judged. Figures: installs, installs needed. */
        PLAN_TOO_FEW_INSTALLS(Severity.WARNING),
        /**
         * Of a plan: B stands later than A on average, or earlier, so a drift that is not modelled passes for a change. Figures: 1 later,
         * −1 earlier.
         */
        PLAN_ORDER_LEANS(Severity.WARNING),
        /** Of a plan: one pull an install; pull scatter cannot be told from refit scatter. */
        PLAN_SINGLE_PULLS(Severity.WARNING),
        /** Of a plan: installs without warm-up pulls. */
        PLAN_NO_WARM_UPS(Severity.WARNING),
        /** Of a plan: no worthwhile gain, so “no difference that matters” can never be said. */
        PLAN_NO_WORTHWHILE_GAIN(Severity.WARNING),
        /** Of a plan: iso-1585-ci, to which only the rig itself can bring values. Names: measures. */
        PLAN_FUEL_NOT_KNOWN(Severity.WARNING),
        /** Of a plan: no figures for pull and refit scatter, so it is not known what it can see. */
        PLAN_NOT_SIZED(Severity.INFORMATION);

        private final Severity severity;

        Code(Severity severity) {
            this.severity = severity;
        }

        /** {@return how much it weighs} */
        public Severity severity() {
            return severity;
        }
    }

    /** How much a notice weighs. */
    public enum Severity {
        INFORMATION, WARNING, ALARM
    }

    public Notice {
        figures = List.copyOf(figures);
        names = List.copyOf(names);
    }

    /** {@return a notice with figures only} */
    public static Notice of(Code code, Double... figures) {
        return new Notice(code, List.of(figures), List.of());
    }

    /** {@return a notice with names only} */
    public static Notice naming(Code code, List<String> names) {
        return new Notice(code, List.of(), names);
    }
}
