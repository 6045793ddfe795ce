package undercroft.view.help;

import javafx.beans.value.ObservableBooleanValue;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;
import undercroft.app.help.HelpBlock;
import undercroft.wording.Messages;

/** A picture of the window in the colours and the language that hold, as wide as there is room. */
final class HelpPicture extends Region {
    private final ImageView view = new ImageView();
    private final String name;
    private final Messages messages;

    HelpPicture(HelpBlock.Picture picture, Messages messages, ObservableBooleanValue dark) {
        this.name = picture.name();
        this.messages = messages;
        getStyleClass().add("help-picture");
        view.setPreserveRatio(true);
        view.setSmooth(true);
        view.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        view.setAccessibleText(picture.description());
        getChildren().add(view);
        view.imageProperty().addListener((property, before, after) -> requestLayout());
        show(dark.get());
        dark.addListener((property, before, after) -> show(after));
    }

    /** The file of a picture among the program's resources. */
    static String file(String name, String language, boolean dark) {
        return "/undercroft/guide/" + name + "-" + language + (dark ? "-dark" : "-light") + ".png";
    }

    private void show(boolean dark) {
        String file = file(name, messages.locale().getLanguage(), dark);
        Image image = new Image(HelpPicture.class.getResource(file).toExternalForm(), true);
        image.progressProperty().addListener((property, before, after) -> requestLayout());
        view.setImage(image);
    }

    private double ratio() {
        Image image = view.getImage();
        return image == null || image.getWidth() == 0 ? 0.5 : image.getHeight() / image.getWidth();
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        return Math.max(0, width) * ratio();
    }

    @Override
    protected void layoutChildren() {
        view.setFitWidth(getWidth());
        view.relocate(0, 0);
    }
}
