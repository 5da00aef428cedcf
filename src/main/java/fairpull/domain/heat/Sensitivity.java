package fairpull.domain.heat;

/** How the deciding measure follows the temperature at the start of a pull. */
public sealed interface Sensitivity {
    /** {@return what {@code cases} makes of this sensitivity} */
    <R> R match(Cases<R> cases);

    /** One answer a kind. */
    interface Cases<R> {
        R inletRule();

        R perKelvin(double relativePerK);
    }

    /**
     * {@return the relative change of the measure from one temperature to another}
     *
     * @param fromK absolute, above 0
     * @param toK absolute, above 0
     */
    default double relativeChange(double fromK, double toK) {
        return match(new Cases<>() {
            @Override
            public Double inletRule() {
                return Math.sqrt(fromK / toK) - 1;
            }

            @Override
            public Double perKelvin(double relativePerK) {
                return relativePerK * (toK - fromK);
            }
        });
    }

    /**
     * Spark-ignition power goes with √(T₀/T) of the absolute inlet temperature: the temperature term of EEC 80/1269 and of the factor
     * in SAE J1349 and ISO 1585 (there 0.6 for 0.5), from memory. It holds for inlet air, not for coolant or oil.
     */
    record InletRule() implements Sensitivity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.inletRule();
        }
    }

    /**
     * A share of the measure per kelvin, as given.
     *
     * @param relativePerK such as −0.0018 for −0.18 % a kelvin
     */
    record PerKelvin(double relativePerK) implements Sensitivity {
        public PerKelvin {
            if (!Double.isFinite(relativePerK)) {
                throw new IllegalArgumentException("a sensitivity must be finite, was " + relativePerK);
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.perKelvin(relativePerK);
        }
    }
}
