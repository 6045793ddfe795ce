package undercroft.view.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.MenuItem;
import undercroft.cellar.Place;
import undercroft.view.kit.Editors;
import undercroft.view.kit.WindowContext;

/** What can be done with a place: its temperatures, its light, all that was told of it. */
record PlaceMenu(WindowContext context, String placeId) {
    MenuItem[] items() {
        Editors editors = context.editors();
        List<MenuItem> items = new ArrayList<>(List.of(
                item(context.messages().of("shelf.plank.edit"), () -> editors.editPlace(place())),
                item(context.messages().of("shelf.plank.light"), () -> editors.editPlace(place())),
                item(context.messages().of("shelf.plank.import"), () -> editors.importInto(place())),
                item(context.messages().of("shelf.plank.dial"), () -> editors.readDial(place()))));
        place().followed()
                .ifPresent(log ->
                        items.add(item(context.messages().of("form.place.unfollow", log.path()), this::unfollow)));
        return items.toArray(MenuItem[]::new);
    }

    private Place place() {
        return context.workspace().getCellar().place(placeId);
    }

    private void unfollow() {
        context.workspace()
                .change(
                        context.messages().of("undo.place.unfollowed", place().name()),
                        cellar -> cellar.withPlace(cellar.place(placeId).withFollowed(Optional.empty())));
    }

    private MenuItem item(String words, Runnable act) {
        MenuItem item = new MenuItem(words);
        item.setMnemonicParsing(false);
        item.setOnAction(event -> context.faults().guard(act));
        return item;
    }
}
