package fairpull.domain.pull;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/** An immutable row of numbers; NaN stands for a missing one. The only class around a {@code double[]}. */
public final class Samples {
    private final double[] values;

    private Samples(double[] values) {
        this.values = values;
    }

    /** {@return a copy of the numbers} */
    public static Samples of(double... values) {
        return new Samples(values.clone());
    }

    /** {@return a copy of the first {@code count} numbers} */
    public static Samples of(double[] values, int count) {
        return new Samples(Arrays.copyOf(values, count));
    }

    /** {@return how many there are} */
    public int size() {
        return values.length;
    }

    /** {@return the number at a place, counted from 0} */
    public double at(int index) {
        return values[index];
    }

    /** {@return the numbers from one place up to another, which is not among them} */
    public Samples between(int from, int to) {
        return new Samples(Arrays.copyOfRange(values, from, to));
    }

    /** {@return the numbers in order} */
    public DoubleStream stream() {
        return Arrays.stream(values);
    }

    /** {@return each number sent through {@code change}} */
    public Samples map(DoubleUnaryOperator change) {
        return new Samples(Arrays.stream(values).map(change).toArray());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Samples samples && Arrays.equals(values, samples.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return values.length + " samples";
    }
}
