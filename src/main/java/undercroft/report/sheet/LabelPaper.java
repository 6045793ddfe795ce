package undercroft.report.sheet;

/** The sheet labels are printed on: each label is A6 across, 148 by 105 mm, so that two fill an A5 and four an A4. */
public enum LabelPaper {
    A6("A6 landscape", 148, 1, 1),
    A5("A5 portrait", 148, 1, 2),
    A4("A4 landscape", 148.5, 2, 2);

    private final String pageSize;
    private final double labelMillimetres;
    private final int across;
    private final int down;

    LabelPaper(String pageSize, double labelMillimetres, int across, int down) {
        this.pageSize = pageSize;
        this.labelMillimetres = labelMillimetres;
        this.across = across;
        this.down = down;
    }

    /** Labels that fit on a sheet. */
    public int labels() {
        return across * down;
    }

    /** The size of a sheet and the places of the labels on it. */
    String css() {
        return "@page{size:" + pageSize + ";margin:0}.sheet{grid-template-columns:repeat(" + across + ","
                + labelMillimetres + "mm);grid-auto-rows:105mm}\n";
    }
}
