package undercroft;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAnnotation;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import net.jqwik.api.Property;

/** Every property is tried on the same inputs in every run: a build that fails tells of a change, not of a day. */
@AnalyzeClasses(packages = "undercroft", importOptions = PropertySeedTest.Tests.class)
final class PropertySeedTest {
    static final class Tests implements ImportOption {
        @Override
        public boolean includes(Location location) {
            return location.contains("/test-classes/");
        }
    }

    @ArchTest
    static final ArchRule EVERY_PROPERTY_HAS_A_SEED = methods()
            .that()
            .areAnnotatedWith(Property.class)
            .should()
            .beAnnotatedWith(DescribedPredicate.describe("a @Property with a seed", PropertySeedTest::hasSeed))
            .because(
                    "a failure that nobody can repeat is put down to chance; other seeds are for an hour of one's own");

    private static boolean hasSeed(JavaAnnotation<?> annotation) {
        return annotation.getRawType().isEquivalentTo(Property.class)
                && annotation
                        .get("seed")
                        .filter(seed -> !"".equals(seed) && !"\u0000".equals(seed))
                        .isPresent();
    }
}
