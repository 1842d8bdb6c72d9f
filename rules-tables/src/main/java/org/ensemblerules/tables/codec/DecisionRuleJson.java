package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.Optional;
import org.ensemblerules.measure.ComparisonMethod;
import org.ensemblerules.measure.Rounding;
import org.ensemblerules.measure.Ties;
import org.ensemblerules.strength.DecisionRule;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;

/** The JSON form of a decision rule. */
final class DecisionRuleJson {
  private enum Name {
    SIMPLE_ACCEPTANCE,
    GUARD_BAND,
    CONFORMANCE_PROBABILITY,
    CONFIDENCE_BOUND_OF_MEAN,
    NORMAL_TOLERANCE,
    SMALL_SAMPLE_NONPARAMETRIC
  }

  private enum Comparison {
    ABSOLUTE,
    ROUNDED_TO_LIMIT,
    ROUNDED_TO
  }

  private DecisionRuleJson() {}

  static Optional<DecisionRule> read(JsonCursor at) {
    ObjectCursor object = at.object();
    // Which fields there are depends on the rule.
    return object
        .required("rule", value -> value.enumOf(Name.class))
        .flatMap(name -> read(name, object));
  }

  private static Optional<DecisionRule> read(Name name, ObjectCursor object) {
    return switch (name) {
      case SIMPLE_ACCEPTANCE -> {
        Optional<ComparisonMethod> comparison =
            object.required("comparison", DecisionRuleJson::comparison);
        yield object.make(() -> new DecisionRule.SimpleAcceptance(comparison.orElseThrow()));
      }
      case GUARD_BAND -> {
        Optional<BigDecimal> r = number(object, "r");
        yield object.make(() -> new DecisionRule.GuardBand(r.orElseThrow()));
      }
      case CONFORMANCE_PROBABILITY -> {
        Optional<BigDecimal> least = number(object, "leastPercent");
        yield object.make(() -> new DecisionRule.ConformanceProbability(least.orElseThrow()));
      }
      case CONFIDENCE_BOUND_OF_MEAN -> {
        Optional<BigDecimal> confidence = number(object, "confidencePercent");
        yield object.make(() -> new DecisionRule.ConfidenceBoundOfMean(confidence.orElseThrow()));
      }
      case NORMAL_TOLERANCE -> {
        Optional<BigDecimal> coverage = number(object, "coveragePercent");
        Optional<BigDecimal> confidence = number(object, "confidencePercent");
        yield object.make(
            () ->
                new DecisionRule.NormalTolerance(coverage.orElseThrow(), confidence.orElseThrow()));
      }
      case SMALL_SAMPLE_NONPARAMETRIC -> {
        Optional<BigDecimal> coverage = number(object, "coveragePercent");
        Optional<BigDecimal> confidence = number(object, "confidencePercent");
        yield object.make(
            () ->
                new DecisionRule.SmallSampleNonparametric(
                    coverage.orElseThrow(), confidence.orElseThrow()));
      }
    };
  }

  private static Optional<BigDecimal> number(ObjectCursor object, String field) {
    return object.required(field, JsonCursor::decimalOrText);
  }

  private static Optional<ComparisonMethod> comparison(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Comparison> method =
        object.required("method", value -> value.enumOf(Comparison.class));
    if (method.isEmpty()) {
      return Optional.empty();
    }
    if (method.get() == Comparison.ABSOLUTE) {
      return object.make(ComparisonMethod::absolute);
    }
    Optional<Ties> ties = object.optional("ties", value -> value.enumOf(Ties.class));
    if (method.get() == Comparison.ROUNDED_TO_LIMIT) {
      return object.make(() -> new ComparisonMethod.RoundedToLimit(ties.orElse(Ties.HALF_EVEN)));
    }
    Optional<BigDecimal> interval = number(object, "interval");
    return object.make(
        () ->
            new ComparisonMethod.RoundedTo(
                new Rounding(interval.orElseThrow(), ties.orElse(Ties.HALF_EVEN))));
  }

  static JsonNode write(DecisionRule rule) {
    if (rule instanceof DecisionRule.SimpleAcceptance simple) {
      return named(Name.SIMPLE_ACCEPTANCE).put("comparison", write(simple.comparison())).node();
    } else if (rule instanceof DecisionRule.GuardBand band) {
      return named(Name.GUARD_BAND).put("r", band.r()).node();
    } else if (rule instanceof DecisionRule.ConformanceProbability probability) {
      return named(Name.CONFORMANCE_PROBABILITY)
          .put("leastPercent", probability.leastPercent())
          .node();
    } else if (rule instanceof DecisionRule.ConfidenceBoundOfMean bound) {
      return named(Name.CONFIDENCE_BOUND_OF_MEAN)
          .put("confidencePercent", bound.confidencePercent())
          .node();
    } else if (rule instanceof DecisionRule.NormalTolerance bound) {
      return named(Name.NORMAL_TOLERANCE)
          .put("coveragePercent", bound.coveragePercent())
          .put("confidencePercent", bound.confidencePercent())
          .node();
    } else if (rule instanceof DecisionRule.SmallSampleNonparametric bound) {
      return named(Name.SMALL_SAMPLE_NONPARAMETRIC)
          .put("coveragePercent", bound.coveragePercent())
          .put("confidencePercent", bound.confidencePercent())
          .node();
    }
    throw new IllegalStateException("a rule without a JSON form: " + rule.getClass().getName());
  }

  private static Fields named(Name name) {
    return new Fields().put("rule", name);
  }

  private static JsonNode write(ComparisonMethod method) {
    if (method instanceof ComparisonMethod.RoundedToLimit rounded) {
      return new Fields()
          .put("method", Comparison.ROUNDED_TO_LIMIT)
          .put("ties", rounded.ties())
          .node();
    } else if (method instanceof ComparisonMethod.RoundedTo rounded) {
      return new Fields()
          .put("method", Comparison.ROUNDED_TO)
          .put("interval", rounded.rounding().interval())
          .put("ties", rounded.rounding().ties())
          .node();
    }
    return new Fields().put("method", Comparison.ABSOLUTE).node();
  }
}
