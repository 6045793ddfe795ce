package undercroft.view.kit;

import undercroft.app.servings.ServingForm;
import undercroft.cellar.Batch;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Serving;

/**
 * The dialogs in which a person tells the cellar something. Each opens at once, changes the workspace when it is
 * confirmed and nothing when it is not; the window shows the change by itself. For the window's thread.
 */
public interface Editors {
    void addPlace();

    void editPlace(Place place);

    void addBatch();

    /** Everything about a batch but its readings, draws and moves: beer, yeast, priming, its lots, whether it is capped. */
    void editBatch(Batch batch);

    /** Some or all bottles of a lot to another place or under another cover. */
    void move(Batch batch, Lot lot);

    /** The same, beginning with the place they are to go to. */
    void moveTo(Batch batch, Lot lot, Place place);

    /** Bottles opened, given away, broken or burst. */
    void draw(Batch batch, Lot lot);

    /** A gauge, a squeeze, an opened bottle or a gravity. */
    void read(Batch batch, Lot lot);

    /** Begins a gauge experiment with a lot, or ends the one that goes on. */
    void experiment(Batch batch, Lot lot);

    /** A new serving, beginning with what is known of it. */
    void addServing(ServingForm.Wish wish);

    void editServing(Serving serving);

    void editNotes(Batch batch);

    /** What is left of a batch, as counted. */
    void count(Batch batch);

    /** A logger's file into a place. */
    void importInto(Place place);

    /** A thermometer in a place, read by eye. */
    void readDial(Place place);

    /** Where live sensors are heard, which is the user's and not the cellar's. */
    void editBroker();

    /** What holds for the whole cellar: name, units, altitude, own bottles and sugars. */
    void editSettings();
}
