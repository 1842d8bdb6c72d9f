package org.ensemblerules.ruleset;

import java.util.Set;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.TestMethod;

/**
 * What an element, its record and the verdict on it name that rows can speak of.
 *
 * @since 0.1
 */
public interface TracedCase {
  /**
   * Tells whether the element is of a kind and use.
   *
   * @param kind the kind; not null
   * @param use the use; not null
   * @return true if it is
   */
  boolean isOf(ElementKind kind, Use use);

  /**
   * Tells whether it was or must be inspected in one of some ways.
   *
   * @param kinds the ways; not null
   * @return true if at least one is asked for or recorded
   */
  boolean inspects(Set<InspectionKind> kinds);

  /**
   * Tells whether a defect was found at a place.
   *
   * @param site the place, as the anatomy has it; not null
   * @param defect the defect; not null
   * @return true if it was
   */
  boolean found(Site site, DefectKind defect);

  /**
   * Tells whether it met something.
   *
   * @param exposure what; not null
   * @return true if that is recorded
   */
  boolean met(Exposure exposure);

  /**
   * Tells whether it came back with a transfer, or is expected back with it.
   *
   * @param back the transfer; not null
   * @return true if it, or the absence that it ends, is recorded
   */
  boolean comesBack(Transfer back);

  /**
   * Tells whether anything of a wash is recorded.
   *
   * @return true if something is
   */
  boolean washed();

  /**
   * Tells whether the verdict asks somebody to do a task.
   *
   * @param task the task; not null
   * @return true if it does
   */
  boolean asksWho(Task task);

  /**
   * Tells whether a task was done by a kind of doer.
   *
   * @param task the task; not null
   * @param by the kind of doer; not null
   * @return true if that is recorded
   */
  boolean did(Task task, EntityKind by);

  /**
   * Tells whether a check was made, is due or is asked for.
   *
   * @param check the check; not null
   * @return true if it was, or is
   */
  boolean names(Check check);

  /**
   * Tells whether a check was made.
   *
   * @param check the check; not null
   * @return true if that is recorded
   */
  boolean checked(Check check);

  /**
   * Tells whether a check was made, or is one that a failure of one made leads to.
   *
   * @param check the check; not null
   * @return true if it was, or is
   */
  boolean followsOn(Check check);

  /**
   * Tells whether the verdict carries a caution.
   *
   * @param caution the key of its row; not null
   * @return true if it does
   */
  boolean warns(RowKey caution);

  /**
   * Tells whether any test report is on the record.
   *
   * @return true if one is
   */
  boolean tested();

  /**
   * Tells whether a property was tested.
   *
   * @param property the property; not null
   * @return true if a report on it is on the record
   */
  boolean tested(Property property);

  /**
   * Tells whether a test method was used.
   *
   * @param method the method; not null
   * @return true if a report by it is on the record
   */
  boolean testedBy(TestMethod method);
}
