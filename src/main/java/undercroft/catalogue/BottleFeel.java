package undercroft.catalogue;

/** How a plastic test bottle feels in the hand, weakest first. */
public enum BottleFeel implements Listed {
    LIMP("limp", "limp"),
    YIELDING("yielding", "yields"),
    FIRM("firm", "firm"),
    HARD("hard", "hard"),
    SOLID("solid", "no give at all");

    private final String id;
    private final String label;

    BottleFeel(String id, String label) {
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
