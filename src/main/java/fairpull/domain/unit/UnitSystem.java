package fairpull.domain.unit;

/** In which units somebody reads temperatures and pressures; inside all is SI. */
public enum UnitSystem {
    METRIC, US
}
