package org.ensemblerules.testkit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.retirement.AgeLimit;
import org.ensemblerules.ruleset.Overlay;
import org.ensemblerules.schedule.Discharge;
import org.ensemblerules.schedule.Start;
import org.ensemblerules.schedule.Timing;
import org.ensemblerules.schedule.Trigger;
import org.ensemblerules.source.Row;

/** Overlays over the frozen rules, sound and unsound. */
public final class ArbitrariesOfOverlays {
  private ArbitrariesOfOverlays() {}

  /**
   * Returns laws and policies of a name, each with one to six rows of any kind.
   *
   * @param id the name
   * @return the overlays
   */
  public static Arbitrary<Overlay> named(String id) {
    return Arbitraries.randomValue(
        random -> {
          Layering layer = Layering.of(id);
          List<Row> rows = new ArrayList<>();
          int many = 1 + random.nextInt(6);
          for (int i = 0; i < many; i++) {
            rows.add(row(layer, random));
          }
          Row[] all = rows.toArray(Row[]::new);
          return random.nextBoolean() ? layer.policy(all) : layer.law(all);
        });
  }

  private static Row row(Layering layer, Random random) {
    ElementKind element = FrozenRules.KINDS.get(random.nextInt(FrozenRules.KINDS.size()));
    return switch (random.nextInt(13)) {
      case 0 -> layer.interval(element, 1 + random.nextInt(14), 1 + random.nextInt(14));
      case 1 ->
          layer.task(
              element,
              Layering.byTheDepartment(),
              new Timing.Every(Start.IN_SERVICE, 1 + random.nextInt(24), 1 + random.nextInt(2), 6));
      case 2 ->
          layer.task(
              element,
              new Discharge.CleanedAs(
                  EnumSet.of(CleaningKind.EXPOSURE_REDUCTION, CleaningKind.ADVANCED)),
              new Timing.After(Trigger.USE, Optional.empty()));
      case 3 ->
          layer.age(
              element,
              element == ElementKind.COAT
                  ? Optional.of(
                      random.nextBoolean() ? LayerKind.OUTER_SHELL : LayerKind.LINER_SYSTEM)
                  : Optional.empty(),
              new AgeLimit.Years(1 + random.nextInt(11)));
      case 4 ->
          layer.forbid(
              any(List.of(Task.values()), random), any(List.of(EntityKind.values()), random));
      case 5 -> layer.share(Integer.toString(1 + random.nextInt(100)));
      case 6 -> layer.keep(1 + random.nextInt(20));
      case 7 ->
          random.nextBoolean()
              ? layer.water(element, Integer.toString(25 + random.nextInt(20)))
              : layer.careLimit(
                  element, new CareDemand.Forbidden(any(List.of(WashPractice.values()), random)));
      case 9 -> layer.itemized(any(List.of(InspectionKind.values()), random));
      case 8 ->
          layer.task(
              element,
              new Discharge.Inspected(InspectionKind.ADVANCED),
              new Timing.Every(Start.IN_SERVICE, 9 + random.nextInt(9), 1, 9 + random.nextInt(9)));
      case 10 ->
          layer.returned(
              any(
                  List.of(
                      Transfer.BACK_FROM_LOAN, Transfer.BACK_FROM_PROVIDER, Transfer.FOUND_AGAIN),
                  random),
              EnumSet.of(any(List.of(InspectionKind.values()), random)));
      default -> defect(layer, random);
    };
  }

  /**
   * Returns manufacturers' instructions of a name: limits of the water for a model, each in place
   * of the frozen rules' or beside it, and practices forbidden.
   *
   * @param id the name
   * @param model the model
   * @return the overlays
   */
  public static Arbitrary<Overlay> instructions(String id, GearModel model) {
    return Arbitraries.randomValue(
        random -> {
          Layering layer = Layering.of(id);
          List<Row> rows = new ArrayList<>();
          for (ElementKind element : FrozenRules.KINDS) {
            switch (random.nextInt(4)) {
              case 0 ->
                  rows.add(
                      Layering.beside(
                          model, layer.water(element, Integer.toString(25 + random.nextInt(16)))));
              case 1 ->
                  rows.add(
                      Layering.beside(
                          model,
                          layer.careLimit(
                              element,
                              new CareDemand.Forbidden(
                                  any(List.of(WashPractice.values()), random)))));
              default ->
                  rows.add(
                      Layering.inPlace(
                          model, layer.water(element, Integer.toString(25 + random.nextInt(40)))));
            }
          }
          return layer.instructions(rows.toArray(Row[]::new));
        });
  }

  private static Row defect(Layering layer, Random random) {
    List<DefectRow> rows =
        FrozenRules.rules().tables().defects().rows().stream()
            .filter(row -> row.element() == ElementKind.COAT)
            .toList();
    DefectRow under = any(rows, random);
    DefectKind defect = random.nextInt(4) == 0 ? DefectKind.CRACKING : under.defect();
    List<Effect> effects =
        List.of(
            new Effect.Note(),
            new Effect.Clean(CleaningKind.ADVANCED, Scope.LAYER),
            new Effect.Repair(RepairClass.ADVANCED, Scope.LAYER),
            new Effect.ReplacePart(RepairClass.ADVANCED),
            new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT),
            new Effect.Retire(Scope.LAYER),
            new Effect.Retire(Scope.ELEMENT));
    return layer.defect(
        under.site().toString(), defect, any(rows, random).band(), any(effects, random));
  }

  private static <T> T any(List<T> all, Random random) {
    return all.get(random.nextInt(all.size()));
  }
}
