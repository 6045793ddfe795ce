package undercroft.view.bottling;

import undercroft.app.bottling.BottlingViewModel;
import undercroft.view.Parts;

/** What the pages of a bottling day work with. */
record Bench(BottlingViewModel model, Parts parts, Papers papers) {}
