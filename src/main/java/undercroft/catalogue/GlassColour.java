package undercroft.catalogue;

/** What a bottle is made of, as light sees it. The spectra stand with the light calculation. */
public enum GlassColour implements Listed {
    FLINT("flint", "clear glass"),
    BLUE("blue", "blue glass"),
    GREEN("green", "green glass"),
    DARK_GREEN("dark-green", "dark green glass"),
    AMBER("amber", "brown glass"),
    PET_CLEAR("pet-clear", "clear plastic"),
    PET_AMBER("pet-amber", "brown plastic"),
    OPAQUE("opaque", "stoneware or metal");

    private final String id;
    private final String label;

    GlassColour(String id, String label) {
        this.id = id;
        this.label = label;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String label() {
        return label;
    }
}
