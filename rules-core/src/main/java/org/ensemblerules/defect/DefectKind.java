package org.ensemblerules.defect;

/**
 * What can be wrong with an element, and the events that put it in question.
 *
 * @since 0.1
 */
public enum DefectKind {
  /** Ordinary soil. */
  SOILING,
  /** Products of combustion, as from entering a structure on fire. */
  COMBUSTION_PRODUCTS,
  /** Blood or body fluids. */
  BODY_FLUIDS,
  /** Hazardous chemicals. */
  HAZARDOUS_CHEMICALS,
  /** Fuel or oil. */
  FUEL_OR_OIL,
  /** Asbestos fibers. */
  ASBESTOS,
  /** A chemical, biological, radiological or nuclear terrorism agent, confirmed. */
  CBRN_AGENT,
  /** Contaminated with something nobody has named. */
  CONTAMINATION_UNKNOWN,
  /** Contamination that cleaning did not and cannot remove. */
  CONTAMINATION_NOT_REMOVABLE,
  /** A rip. */
  RIP,
  /** A tear. */
  TEAR,
  /** A cut. */
  CUT,
  /** A puncture or hole. */
  PUNCTURE,
  /** Cloth worn thin or through by rubbing; a frayed edge too. */
  ABRASION,
  /** Broken stitches. */
  BROKEN_STITCHING,
  /** Missing or skipped stitches. */
  MISSING_STITCHING,
  /** A seam that moves when both sides are pulled by hand. */
  LOOSE_SEAM,
  /** Several gaps in one seam, each short. */
  SEVERAL_STITCH_GAPS,
  /** A seam that was sewn again. */
  RESTITCHED,
  /** Sealing tape that lifts. */
  LIFTING_TAPE,
  /** The part is not there. */
  MISSING,
  /** The part is broken, bent or worn. */
  DAMAGED,
  /** The part is corroded. */
  CORRODED,
  /** The part hangs loose. */
  LOOSE,
  /** It does not open, close or hold as it should. */
  CLOSURE_FAILURE,
  /** Charring. */
  CHARRING,
  /** A hole burned by an ember. */
  BURN_HOLE,
  /** Melting. */
  MELTING,
  /** Cloth or film that has become brittle. */
  EMBRITTLEMENT,
  /** A change of color. */
  DISCOLORATION,
  /** A change of texture. */
  CHANGED_TEXTURE,
  /** Shrinkage. */
  SHRINKAGE,
  /** Strength lost, as when thumbs go through the cloth. */
  STRENGTH_LOSS,
  /** Film or layers coming apart. */
  DELAMINATION,
  /** Cracks. */
  CRACKING,
  /** A net of fine cracks. */
  CRAZING,
  /** A dent. */
  DENT,
  /** A soft spot. */
  SOFT_SPOT,
  /** Bubbles. */
  BUBBLING,
  /** Warping or deformation. */
  WARPING,
  /** Scratches that limit sight. */
  SCRATCHES_LIMITING_SIGHT,
  /** Stretch or elasticity lost. */
  LOST_ELASTICITY,
  /** Flexibility lost. */
  LOST_FLEXIBILITY,
  /** Insulation lost or shifted. */
  LOST_INSULATION,
  /** Liquid comes through. */
  LEAK,
  /** Water resistance lost. */
  LOST_WATER_RESISTANCE,
  /** Retroreflection substantially below that of new trim. */
  LOST_RETROREFLECTIVITY,
  /** Radiant reflective surface lost. */
  LOST_RADIANT_REFLECTIVITY,
  /** A label that cannot be read. */
  ILLEGIBLE,
  /** Edges lifting or corners curling on a label that is still firmly attached. */
  EDGES_LIFTING,
  /** Shell, liner or drag rescue device that do not belong together. */
  MISMATCH_OF_ASSEMBLY,
  /** A change or accessory that the manufacturer has not approved. */
  UNAPPROVED_ALTERATION,
  /** Tread worn. */
  TREAD_WEAR,
  /** Sole coming off. */
  SOLE_SEPARATION,
  /** A metal or composite insert shows through or has moved. */
  EXPOSED_INSERT,
  /** Lining torn or worn through. */
  LINING_WORN,
  /** A liner turned inside out or pulled out. */
  INVERTED_LINER,
  /** A liner, or another layer, detached from its place. */
  DETACHED,
  /** A drag rescue device that does not lie as its instructions show. */
  MISROUTED,
  /** One of a pair is missing or of another pair. */
  INCOMPLETE_PAIR,
  /** Coat and trousers overlap less than they must. */
  OVERLAP_TOO_SMALL,
  /** It does not fit its wearer. */
  POOR_FIT,
  /** Never certified to the product standard edition in force when it was made. */
  NEVER_CERTIFIED,
  /** No certification mark. */
  CERTIFICATION_MARK_MISSING,
  /** Damaged beyond repair that is safe or worth its cost. */
  BEYOND_REPAIR,
  /** Event: the helmet was struck. */
  HELMET_STRUCK,
  /** Event: the drag rescue device was loaded. */
  DRAG_RESCUE_DEVICE_LOADED,
  /** Event: washed with chlorine bleach. */
  BLEACHED,
  /** Event: overheated in washing or drying. */
  OVERHEATED_IN_WASHING,
  /** Event: exposed to extreme heat, as in a flashover. */
  EXTREME_HEAT_EXPOSURE,
  /** Event: its wearer was injured or killed, or the element is suspected in an incident. */
  INJURY_TO_WEARER
}
