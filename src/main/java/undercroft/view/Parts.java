package undercroft.view;

import java.time.Clock;
import javafx.beans.property.BooleanProperty;
import undercroft.app.Faults;
import undercroft.app.Forecasts;
import undercroft.app.Workspace;

/**
 * What the window works with.
 *
 * @param dark whether colours are dark; the window changes it, its owner may keep it
 */
public record Parts(
        Workspace workspace,
        Forecasts forecasts,
        Faults faults,
        Editors editors,
        CellarChooser chooser,
        Clock clock,
        BooleanProperty dark) {}
