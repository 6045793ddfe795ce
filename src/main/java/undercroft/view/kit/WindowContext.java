package undercroft.view.kit;

import java.time.Clock;
import java.time.Instant;
import javafx.beans.property.BooleanProperty;
import javafx.beans.value.ObservableValue;
import undercroft.app.Faults;
import undercroft.session.BackgroundTasks;
import undercroft.session.Forecasts;
import undercroft.session.Sensors;
import undercroft.session.Workspace;
import undercroft.wording.Messages;

/**
 * What the window of one cellar works with. All of it goes with that cellar, so that views may listen to it for as long as
 * they live.
 *
 * @param tasks where files are written and long work is done
 * @param now the clock's last step
 * @param sensors how it stands with the live sensors
 * @param dark whether colours are dark; the window changes it, its owner may keep it
 */
public record WindowContext(
        Messages messages,
        Workspace workspace,
        Forecasts forecasts,
        BackgroundTasks tasks,
        Faults faults,
        Editors editors,
        CellarChooser chooser,
        Clock clock,
        ObservableValue<Instant> now,
        ObservableValue<Sensors.State> sensors,
        BooleanProperty dark) {}
