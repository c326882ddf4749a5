#include "app/stages/systems_page.h"

#include "tests/app/application.h"
#include "tests/app/example_plan.h"

namespace plugside {
namespace {

class SystemsPageTest : public OnScreen {
protected:
    SystemsPageTest() : tool_(session_, choices_), page_(session_, choices_, tool_) { page_.resize(320, 700); }

    // A second system, B, and what else may be true of both.
    void show(const Alternatives& alternatives) {
        ExampleField example = example_field();
        example.plan.systems.push_back(example.plan.systems.front());
        example.plan.systems.back().letter = "B";
        example.plan.alternatives = alternatives;
        example.plan.revision = example.field.survey.revision;
        session_.adopt(example.field, {});
        session_.planning().stop();
        ASSERT_TRUE(session_.accept(std::make_shared<const Plan>(example.plan)));
        page_.show();
    }

    [[nodiscard]] QLabel* label_of_alternatives() const {
        for (QLabel* label : page_.findChildren<QLabel*>())
            if (label->accessibleName() == QStringLiteral("what else may be true")) return label;
        return nullptr;
    }
    [[nodiscard]] bool says(const QString& words) const {
        const auto labels = page_.findChildren<QLabel*>();
        return std::any_of(labels.begin(), labels.end(),
                           [&](QLabel* label) { return label->isVisible() && label->text().contains(words); });
    }

    FieldSession session_;
    Choices choices_;
    SystemsTool tool_;
    SystemsPage page_;
};

TEST_F(SystemsPageTest, TellsTheLikeliestAlternativesFirstAndNoMoreThanThree) {
    Alternatives alternatives;
    alternatives.joined = {{0, 1, Probability::of(0.31)}, {0, 1, Probability::of(0.12)}, {0, 1, Probability::of(0.11)}};
    alternatives.split = {{0, Probability::of(0.4), {1, 2}}};
    alternatives.doubtful = {{3, 0, Probability::of(0.4), 1, Probability::of(0.2)}};
    show(alternatives);
    ASSERT_NE(label_of_alternatives(), nullptr);
    const QStringList lines = label_of_alternatives()->text().split('\n');
    ASSERT_EQ(lines.size(), 5);
    EXPECT_EQ(lines[1], QStringLiteral("A is two animals' in 40 of 100: M002 and M003 apart"));
    EXPECT_EQ(lines[2], QStringLiteral("A and B are one animal's in 31 of 100"));
    EXPECT_EQ(lines[4], QStringLiteral("1 mound could well be another animal's"));
    EXPECT_TRUE(label_of_alternatives()->isVisible());
}

TEST_F(SystemsPageTest, OfAPickedSystemOnlyItsOwnAreTold) {
    Alternatives alternatives;
    alternatives.split = {{0, Probability::of(0.4), {1, 2}}, {1, Probability::of(0.2), {4, 5}}};
    alternatives.doubtful = {{3, 1, Probability::of(0.4), 0, Probability::of(0.2)}};
    show(alternatives);
    choices_.pick_system(1);
    EXPECT_FALSE(label_of_alternatives()->isVisible());
    EXPECT_TRUE(says(QStringLiteral("B is two animals' in 20 of 100: M005 and M006 apart")));
    EXPECT_TRUE(says(QStringLiteral("1 mound could well be another animal's")));
    EXPECT_FALSE(says(QStringLiteral("A is two animals'")));
}

TEST_F(SystemsPageTest, WithoutAlternativesThereIsNoHeading) {
    show({});
    EXPECT_FALSE(label_of_alternatives()->isVisible());
    EXPECT_FALSE(says(QStringLiteral("What else")));
}

}  // namespace
}  // namespace plugside
