package fairpull.domain.air;

import java.util.List;

/**
 * Something a reader must know about a factor: a code and its figures. Words are made elsewhere.
 *
 * @param code what is noticed
 * @param figures in the order its code documents
 * @param ofFirst whether it is about the air of the first install
 */
public record AirNotice(Code code, List<Double> figures, boolean ofFirst) {
    /** What can be noticed. */
    public enum Code {
        /** A station pressure that looks like a sea-level one. Figures: elevation (m), error of the factor if so (share). */
        SEA_LEVEL_FOR_STATION,
        /** A sea-level pressure that looks like a station one. Figures: the reading (Pa). */
        STATION_FOR_SEA_LEVEL,
        /** No humidity: taken as dry. Figures: humidity assumed for the size (share), error of the dry factor then (share). */
        HUMIDITY_LEFT_OUT,
        /** Air so dry that a share was likely typed for percent. Figures: the reading (share). */
        HUMIDITY_TOO_LOW,
        /** A temperature in °C that could be one in °F. Figures: the number. */
        TEMPERATURE_LIKE_FAHRENHEIT,
        /** Outside the standard's range of temperature. Figures: low, high, found (K). */
        TEMPERATURE_OUTSIDE,
        /** Outside the standard's range of dry pressure. Figures: low, high, found (Pa). */
        DRY_PRESSURE_OUTSIDE,
        /** The factor leaves the range within which it may be used. Figures: low, high, found. */
        FACTOR_OUTSIDE,
        /** Closed-loop boost control does not follow the ambient as the factor assumes. */
        BOOST_CAUTION,
        /** The standard is withdrawn and reads high beside present ones. Figures: factor of SAE J1349 in this air. */
        WITHDRAWN
    }

    public AirNotice {
        figures = List.copyOf(figures);
    }

    /** {@return a notice with its figures} */
    public static AirNotice of(Code code, Double... figures) {
        return new AirNotice(code, List.of(figures), false);
    }

    /** {@return the same notice, about the air of the first install} */
    public AirNotice atFirst() {
        return new AirNotice(code, figures, true);
    }
}
