package io.bindprep.check;

import java.util.List;

/** Every rule of the check. */
final class Rules {
    static final List<Rule> ALL = List.of(
            new UncheckedRule(),
            new MatterRule(),
            new BackgroundRule(),
            new SizeRule(),
            new FoldOutRule(),
            new HalfHoleRule(),
            new PressSheetRule(),
            new TabRule(),
            new TrimDeclaredRule(),
            new TrimBoxRule(),
            new FontRule(),
            new AppearanceRule(),
            new PassedOverRule(),
            new ImageResolutionRule(),
            new BleedRule(),
            new StackRule(),
            new PunchRule(),
            new WireThicknessRule(),
            new RotationRule(),
            new BlankBackRule(),
            new FileRule());

    private Rules() {}
}
