package undercroft.app.form;

/** A row that counts once its figure is given; until then it is as good as not there. */
public interface FilledIn {
    boolean isFilledIn();
}
