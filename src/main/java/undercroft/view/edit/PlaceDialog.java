package undercroft.view.edit;

import java.util.Optional;
import undercroft.app.form.place.PlaceForm;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.view.kit.form.FormDialog;
import undercroft.view.kit.form.FormDialogs;
import undercroft.view.kit.form.FormGrid;

/** Asks for a place. */
final class PlaceDialog {
    private PlaceDialog() {}

    static FormDialog open(FormDialogs dialogs, Cellar cellar, Optional<Place> before) {
        PlaceForm form = new PlaceForm(dialogs.messages(), cellar, before);
        FormGrid grid = new FormGrid()
                .field(form.name())
                .section(dialogs.messages().of("form.place.section.temperature"))
                .field(form.source())
                .fields(form.topicFields())
                .fields(form.temperatureFields())
                .field(form.stacking())
                .field(form.lag())
                .section(dialogs.messages().of("form.place.section.light"))
                .fields(form.lightFields());
        String title = before.map(place -> dialogs.messages().of("form.place.title.edit", place.name()))
                .orElseGet(() -> dialogs.messages().of("form.place.title.add"));
        FormDialog dialog = dialogs.open(title, form, grid);
        before.ifPresent(place -> dialogs.offerDeleting(
                dialog,
                "place",
                place.name(),
                dialogs.messages().of("undo.place.deleted", place.name()),
                current -> PlaceForm.without(current, place.id())));
        return dialog;
    }
}
