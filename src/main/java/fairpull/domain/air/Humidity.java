package fairpull.domain.air;

/** How moist the air is, as it was read. */
public sealed interface Humidity {

    /** {@return what {@code cases} makes of this reading} */
    <R> R match(Cases<R> cases);

    /** One answer a kind of reading. */
    interface Cases<R> {
        R relative(Relative reading);

        R dewPoint(DewPoint reading);

        R wetBulb(WetBulb reading);

        R notRead();
    }

    /**
     * Relative humidity.
     *
     * @param share of the saturation vapour pressure over water, 0 to 1
     */
    record Relative(double share) implements Humidity {
        public Relative {
            if (!(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException("relative humidity must lie between 0 and 1, was " + share);
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.relative(this);
        }
    }

    /** The temperature at which the air would be saturated over water. */
    record DewPoint(double temperatureK) implements Humidity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.dewPoint(this);
        }
    }

    /** The temperature of a ventilated thermometer with a wet sleeve, above 0 °C. */
    record WetBulb(double temperatureK) implements Humidity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.wetBulb(this);
        }
    }

    /** Nobody read it: the air is taken as dry. */
    record NotRead() implements Humidity {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.notRead();
        }
    }
}
