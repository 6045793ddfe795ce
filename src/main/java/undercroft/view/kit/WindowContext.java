package undercroft.view.kit;

import java.time.Clock;
import javafx.beans.property.BooleanProperty;
import undercroft.app.Faults;
import undercroft.session.Forecasts;
import undercroft.session.Workspace;
import undercroft.wording.Messages;

/**
 * What the window works with.
 *
 * @param dark whether colours are dark; the window changes it, its owner may keep it
 */
public record WindowContext(
        Messages messages,
        Workspace workspace,
        Forecasts forecasts,
        Faults faults,
        Editors editors,
        CellarChooser chooser,
        Clock clock,
        BooleanProperty dark) {}
