package undercroft.catalogue;

/**
 * How bottles were filled: how much oxygen that let in, as a factor on ageing (assumption; 1 mL of air brings 0.28 mg of
 * oxygen), and how much air is left under the cap (with the pressure calculation).
 */
public enum FillingMethod implements Listed {
    FOAM_CAPPED("foam-capped", "capped on foam", 1),
    CAREFUL("careful", "filled quietly from the bottom", 1.2),
    SPLASHED("splashed", "splashed or capped over air", 1.75),
    /** Nobody said; aged as if filled quietly. */
    NOT_TOLD("not-told", "not known", 1.2);

    private final String id;
    private final String label;
    private final double ageingFactor;

    FillingMethod(String id, String label, double ageingFactor) {
        this.id = id;
        this.label = label;
        this.ageingFactor = ageingFactor;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String label() {
        return label;
    }

    public double ageingFactor() {
        return ageingFactor;
    }
}
