package undercroft.catalogue;

/** What a bottle is made of, as light sees it. The spectra stand with the light calculation. */
public enum GlassColour implements Listed {
    FLINT("flint"),
    BLUE("blue"),
    GREEN("green"),
    DARK_GREEN("dark-green"),
    AMBER("amber"),
    PET_CLEAR("pet-clear"),
    PET_AMBER("pet-amber"),
    OPAQUE("opaque");

    private final String id;

    GlassColour(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
