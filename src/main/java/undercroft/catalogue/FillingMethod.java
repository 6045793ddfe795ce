package undercroft.catalogue;

/**
 * How bottles were filled: how much oxygen that let in, as a factor on ageing (assumption; 1 mL of air brings 0.28 mg of
 * oxygen), and how much air is left under the cap (with the pressure calculation).
 */
public enum FillingMethod implements Listed {
    FOAM_CAPPED("foam-capped", 1),
    CAREFUL("careful", 1.2),
    SPLASHED("splashed", 1.75),
    /** Nobody said; aged as if filled quietly. */
    NOT_TOLD("not-told", 1.2);

    private final String id;
    private final double ageingFactor;

    FillingMethod(String id, double ageingFactor) {
        this.id = id;
        this.ageingFactor = ageingFactor;
    }

    @Override
    public String id() {
        return id;
    }

    public double ageingFactor() {
        return ageingFactor;
    }
}
