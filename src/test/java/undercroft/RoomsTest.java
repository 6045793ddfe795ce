package undercroft;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Who may know whom in the house, and why. */
@AnalyzeClasses(packages = "undercroft", importOptions = MainSources.class)
final class RoomsTest {
    private static final DescribedPredicate<JavaClass> ARRAYS =
            DescribedPredicate.describe("arrays and primitives", one -> one.isArray() || one.isPrimitive());

    @ArchTest
    static final ArchRule QUANTITY_STANDS_ALONE =
            onlyKnows("quantity", "every other room stands on it, so it must not lean on any", "undercroft.quantity..");

    @ArchTest
    static final ArchRule SERIES_KNOWS_QUANTITIES = onlyKnows(
            "series",
            "numbers in time are of use to any picture or calculation",
            "undercroft.quantity..",
            "undercroft.series..");

    @ArchTest
    static final ArchRule THE_CATALOGUE_ONLY_LISTS = onlyKnows(
            "catalogue",
            "a new sugar or bottle is a line in a list; equations live in calc",
            "undercroft.quantity..",
            "undercroft.catalogue..");

    @ArchTest
    static final ArchRule NUMBERS_KNOW_NOTHING_OF_BEER = onlyKnows(
            "calc.numeric",
            "what is true of any number is checked as such",
            "undercroft.quantity..",
            "undercroft.calc.numeric..",
            "org.hipparchus..");

    @ArchTest
    static final ArchRule CALCULATIONS_ARE_PURE = onlyKnows(
            "calc",
            "a calculation must be checkable without a cellar, a disk or a window",
            "undercroft.quantity..",
            "undercroft.series..",
            "undercroft.catalogue..",
            "undercroft.calc..",
            "org.hipparchus..");

    @ArchTest
    static final ArchRule THE_CELLAR_SAYS_WHAT_EXISTS = onlyKnows(
            "cellar",
            "what the user told is kept apart from what is computed of it",
            "undercroft.quantity..",
            "undercroft.catalogue..",
            "undercroft.cellar..");

    @ArchTest
    static final ArchRule THE_STORE_IS_A_LEAF = onlyKnows(
            "store",
            "files know the cellar; nothing computed is ever stored",
            "undercroft.quantity..",
            "undercroft.catalogue..",
            "undercroft.cellar..",
            "undercroft.series..",
            "undercroft.store..",
            "com.fasterxml.jackson..",
            "de.siegmar.fastcsv..");

    @ArchTest
    static final ArchRule MARKUP_STANDS_ALONE = onlyKnows(
            "markup",
            "whatever is written for a browser is escaped in one place, which needs to know nothing else",
            "undercroft.markup..",
            "javax.xml.stream..");

    @ArchTest
    static final ArchRule PICTURES_ARE_DATA = onlyKnows(
            "plot",
            "the same picture is drawn on screen and on paper, and read in tests without a toolkit",
            "undercroft.quantity..",
            "undercroft.series..",
            "undercroft.markup..",
            "undercroft.plot..");

    @ArchTest
    static final ArchRule ONE_PATH_TO_AN_OUTLOOK = onlyKnows(
            "outlook",
            "window, report and commands show the same numbers because they come from here, with no disk or toolkit",
            "undercroft.quantity..",
            "undercroft.series..",
            "undercroft.catalogue..",
            "undercroft.calc..",
            "undercroft.cellar..",
            "undercroft.outlook..");

    @ArchTest
    static final ArchRule BOTTLING_DAY_IS_PURE = onlyKnows(
            "bottling",
            "the screen, the sheet and the dose command must give one figure",
            "undercroft.quantity..",
            "undercroft.catalogue..",
            "undercroft.calc..",
            "undercroft.cellar..",
            "undercroft.bottling..",
            "org.hipparchus..");

    @ArchTest
    static final ArchRule WORDS_COME_LAST = onlyKnows(
            "wording",
            "facts are made without a language; one room turns them into words, for window, page and commands",
            "undercroft.quantity..",
            "undercroft.series..",
            "undercroft.catalogue..",
            "undercroft.calc..",
            "undercroft.cellar..",
            "undercroft.bottling..",
            "undercroft.outlook..",
            "undercroft.wording..");

    @ArchTest
    static final ArchRule REPORTS_NEED_NO_WINDOW = noClasses()
            .that()
            .resideInAnyPackage("undercroft.report..", "undercroft.command..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx..", "undercroft.view..", "undercroft.app..")
            .because("the command line must work with no toolkit loaded");

    @ArchTest
    static final ArchRule THE_APP_HAS_NO_WINDOW = noClasses()
            .that()
            .resideInAPackage("undercroft.app..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javafx.scene..", "javafx.stage..", "javafx.application..", "undercroft.view..")
            .because("what a user can do is tested without a toolkit");

    @ArchTest
    static final ArchRule A_SESSION_IS_NOT_A_PAGE = noClasses()
            .that()
            .resideInAPackage("undercroft.session..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("undercroft.app..", "undercroft.view..", "javafx.scene..", "javafx.stage..")
            .because("an open cellar works the same whichever page looks at it, and a command has no page");

    @ArchTest
    static final ArchRule ONE_PICTURE_FOR_SCREEN_AND_PAPER = onlyKnows(
            "picture",
            "what a plot shows of a batch is decided once, for the window and for the report",
            "undercroft.quantity..",
            "undercroft.series..",
            "undercroft.catalogue..",
            "undercroft.calc..",
            "undercroft.cellar..",
            "undercroft.outlook..",
            "undercroft.bottling..",
            "undercroft.wording..",
            "undercroft.plot..",
            "undercroft.wording..",
            "undercroft.picture..");

    @ArchTest
    static final ArchRule PAGES_STAND_ON_THE_KIT_AND_NOT_ON_EACH_OTHER = slices().matching("undercroft.view.(*)..")
            .should()
            .notDependOnEachOther()
            .ignoreDependency(
                    JavaClass.Predicates.resideInAPackage("undercroft.view.."),
                    JavaClass.Predicates.resideInAPackage("undercroft.view.kit.."))
            .because("a page can be changed or taken out without a look at the others");

    @ArchTest
    static final ArchRule THE_KIT_KNOWS_NO_PAGE = classes()
            .that()
            .resideInAPackage("undercroft.view.kit..")
            .should()
            .onlyDependOnClassesThat(JavaClass.Predicates.resideOutsideOfPackage("undercroft.view..")
                    .or(JavaClass.Predicates.resideInAPackage("undercroft.view.kit.."))
                    .or(ARRAYS))
            .because("what every page uses must not know any of them");

    @ArchTest
    static final ArchRule NO_KNOT_IN_THE_APP =
            slices().matching("undercroft.app.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule NO_KNOT_IN_THE_VIEW =
            slices().matching("undercroft.view.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule THE_VIEW_ONLY_SHOWS = noClasses()
            .that()
            .resideInAPackage("undercroft.view..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("undercroft.calc..")
            .because("a window that computes shows other numbers than the report one day");

    @ArchTest
    static final ArchRule ONLY_FILES_AND_REPORTS_SEE_JSON = noClasses()
            .that()
            .resideOutsideOfPackages("undercroft.store..", "undercroft.report..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.fasterxml.jackson..")
            .because("a file format is the business of the two rooms that write files");

    @ArchTest
    static final ArchRule NO_ROOM_LEADS_BACK_INTO_ITSELF = slices().matching("undercroft.(*)..")
            .should()
            .beFreeOfCycles()
            .because("a room in a circle can be neither understood nor tested without the others");

    @ArchTest
    static final ArchRule NO_PACKAGE_LEADS_BACK_INTO_ITSELF = slices().matching("undercroft.(**)")
            .should()
            .beFreeOfCycles()
            .because("a knot of packages inside one room is as tight as one between rooms, only harder to see");

    @ArchTest
    static final ArchRule NOTHING_MOVES_BY_ITSELF = noClasses()
            .should()
            .dependOnClassesThat()
            .haveNameMatching(
                    "javafx\\.animation\\.(Fade|Fill|Parallel|Path|Rotate|Scale|Sequential|Stroke|Translate)Transition")
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("javafx\\.animation\\.AnimationTimer")
            .because("who is made ill by motion needs no setting where nothing slides, turns or fades");

    @ArchTest
    static final ArchRule NAMES_ARE_NOUNS_OF_THE_FIELD = noClasses()
            .should()
            .haveNameMatching(".*(Manager|Helper|Utils?|Impl)")
            .because("a name like that says who wrote the class, not what it is");

    private static ArchRule onlyKnows(String room, String reason, String... known) {
        String[] all = new String[known.length + 1];
        System.arraycopy(known, 0, all, 0, known.length);
        all[known.length] = "java..";
        return classes()
                .that()
                .resideInAPackage("undercroft." + room + "..")
                .should()
                .onlyDependOnClassesThat(
                        JavaClass.Predicates.resideInAnyPackage(all).or(ARRAYS))
                .because(reason);
    }
}
