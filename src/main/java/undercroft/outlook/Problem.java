package undercroft.outlook;

/** Something that keeps a figure from being made, and where. */
public record Problem(String where, String what) {}
