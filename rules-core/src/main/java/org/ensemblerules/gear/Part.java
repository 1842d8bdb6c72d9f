package org.ensemblerules.gear;

/**
 * The parts of elements that are looked at, damaged, repaired and replaced.
 *
 * @since 0.1
 */
public enum Part {
  /** The element as a whole. */
  WHOLE_ELEMENT,
  /** The cloth or film of a layer, or of an element without separable layers. */
  FABRIC,
  /** Outer shell seam whose failure would expose the inner layers. */
  SEAM_MAJOR_A,
  /** Moisture barrier or thermal liner seam whose failure would lessen protection. */
  SEAM_MAJOR_B,
  /** Garment seam that is neither Major A nor Major B. */
  SEAM_MINOR,
  /** Seam of an element whose seams are not classed. */
  SEAM,
  /** Sealing tape over a moisture barrier seam. */
  SEAM_TAPE,
  /** The main closure system. */
  CLOSURE,
  /** Hook-and-loop fastener. */
  HOOK_AND_LOOP,
  /** Zipper. */
  ZIPPER,
  /** Snap fasteners. */
  SNAPS,
  /** Hooks and D-rings. */
  HOOKS_AND_D_RINGS,
  /** Other hardware. */
  HARDWARE,
  /** Retroreflective or fluorescent trim. */
  TRIM,
  /** A label. */
  LABEL,
  /** Wristlet. */
  WRISTLET,
  /** Cuff. */
  CUFF,
  /** Collar. */
  COLLAR,
  /** Reinforcement, as on knees, elbows, shoulders or cuffs. */
  REINFORCEMENT,
  /** Pocket. */
  POCKET,
  /** Suspender attachment. */
  SUSPENDER_ATTACHMENT,
  /** What holds the liner in the shell. */
  LINER_ATTACHMENT,
  /** The drag rescue device as installed in a coat or coverall. */
  DRAG_RESCUE_DEVICE,
  /** The strap of a drag rescue device. */
  DRAG_RESCUE_STRAP,
  /** The handle of a drag rescue device. */
  DRAG_RESCUE_HANDLE,
  /** Helmet shell. */
  HELMET_SHELL,
  /** Helmet impact cap. */
  IMPACT_CAP,
  /** Helmet suspension. */
  SUSPENSION,
  /** Helmet headband. */
  HEADBAND,
  /** Helmet retention system: chin strap, nape device and their fastenings. */
  RETENTION_SYSTEM,
  /** Helmet ear covers. */
  EAR_COVERS,
  /** Helmet faceshield. */
  FACESHIELD,
  /** Goggles. */
  GOGGLES,
  /** Helmet edge trim. */
  EDGE,
  /** Helmet brackets. */
  BRACKETS,
  /** Glove shell. */
  GLOVE_SHELL,
  /** Glove thermal liner. */
  GLOVE_LINER,
  /** Glove moisture barrier. */
  GLOVE_BARRIER,
  /** Footwear upper. */
  FOOTWEAR_UPPER,
  /** Footwear sole. */
  SOLE,
  /** Footwear heel. */
  HEEL,
  /** Footwear toe cap. */
  TOE_CAP,
  /** Footwear puncture-resistant device. */
  PUNCTURE_RESISTANT_DEVICE,
  /** Footwear ladder shank. */
  SHANK,
  /** Footwear lining. */
  LINING,
  /** Footwear pull straps. */
  PULL_STRAPS,
  /** Hood face opening. */
  FACE_OPENING,
  /** Hood bib. */
  BIB,
  /** Hood particulate-blocking layer. */
  PARTICULATE_BLOCKING_LAYER,
  /** Radiant reflective outer surface of a proximity element. */
  REFLECTIVE_SURFACE
}
