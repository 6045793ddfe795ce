package undercroft.view.kit;

import javafx.scene.paint.Color;
import undercroft.catalogue.GlassColour;

/** How a bottle is coloured: its outline, the empty glass, and the beer seen through it. */
record GlassPaint(Color outline, Color glass, Color beer) {
    static GlassPaint of(GlassColour colour, boolean dark) {
        return switch (colour) {
            case AMBER, PET_AMBER -> dark ? of("#C08A52", "#3B2C1F", "#9A5B27") : of("#6B3F17", "#EBD3B4", "#8A4F1D");
            case GREEN -> dark ? of("#6FBF8B", "#21392C", "#35774D") : of("#2C6B43", "#CFE6D5", "#4C9365");
            case DARK_GREEN -> dark ? of("#5C9C72", "#1D3025", "#2C5F3F") : of("#1F4A30", "#BFD6C6", "#2F6A45");
            case BLUE -> dark ? of("#7FA9DA", "#22303F", "#3F6C9E") : of("#2F5C90", "#CFDDEE", "#4A7CB4");
            case FLINT -> dark ? of("#A9BCC2", "#2B3438", "#C39A4E") : of("#6F878F", "#EAF1F2", "#D9A94F");
            case PET_CLEAR -> dark ? of("#93AFC4", "#2A343C", "#B98F49") : of("#5F7F99", "#E6EEF4", "#D3A24A");
            case OPAQUE -> dark ? of("#B0A797", "#4A453D", "#8A8171") : of("#6C6455", "#C9C2B4", "#948B7A");
        };
    }

    private static GlassPaint of(String outline, String glass, String beer) {
        return new GlassPaint(Color.web(outline), Color.web(glass), Color.web(beer));
    }
}
