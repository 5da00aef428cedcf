package fairpull.domain.plan;

/** The standard by which a measure is brought to reference air; {@code NONE} is as measured. */
public enum Correction {
    NONE("none"),
    SAE_J1349("sae-j1349"),
    ISO_1585("iso-1585"),
    ISO_1585_CI("iso-1585-ci"),
    EEC_80_1269("eec-80-1269"),
    DIN_70020("din-70020"),
    SAE_J607("sae-j607");

    private final String id;

    Correction(String id) {
        this.id = id;
    }

    /** {@return the name used in files and on the command line} */
    public String id() {
        return id;
    }
}
