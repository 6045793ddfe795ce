package undercroft.view;

import java.util.ArrayList;
import java.util.List;
import undercroft.app.servings.ServingForm;
import undercroft.cellar.Batch;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Serving;
import undercroft.view.kit.Editors;

/** Dialogs that only note what was asked of them. */
final class NoEditors implements Editors {
    final List<String> asked = new ArrayList<>();

    @Override
    public void addPlace() {
        asked.add("add place");
    }

    @Override
    public void editPlace(Place place) {
        asked.add("edit place " + place.id());
    }

    @Override
    public void addBatch() {
        asked.add("add batch");
    }

    @Override
    public void editBatch(Batch batch) {
        asked.add("edit batch " + batch.id());
    }

    @Override
    public void move(Batch batch, Lot lot) {
        asked.add("move " + batch.id() + "/" + lot.id());
    }

    @Override
    public void moveTo(Batch batch, Lot lot, Place place) {
        asked.add("move " + batch.id() + "/" + lot.id() + " to " + place.id());
    }

    @Override
    public void draw(Batch batch, Lot lot) {
        asked.add("draw " + batch.id() + "/" + lot.id());
    }

    @Override
    public void read(Batch batch, Lot lot) {
        asked.add("read " + batch.id() + "/" + lot.id());
    }

    @Override
    public void addServing(ServingForm.Wish wish) {
        asked.add("add pour " + wish.batchId().orElse("of any batch"));
    }

    @Override
    public void editServing(Serving serving) {
        asked.add("edit pour " + serving.id());
    }

    @Override
    public void editNotes(Batch batch) {
        asked.add("notes " + batch.id());
    }

    @Override
    public void count(Batch batch) {
        asked.add("count " + batch.id());
    }

    @Override
    public void importInto(Place place) {
        asked.add("import " + place.id());
    }

    @Override
    public void readDial(Place place) {
        asked.add("read dial " + place.id());
    }

    @Override
    public void experiment(Batch batch, Lot lot) {
        asked.add("experiment");
    }

    @Override
    public void editBroker() {
        asked.add("broker");
    }

    @Override
    public void editSettings() {
        asked.add("settings");
    }
}
