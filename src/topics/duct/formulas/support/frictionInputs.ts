/** What every turbulent formula asks. */
export interface FrictionInputs {
  reynolds: number;
  /** Height of the roughness over the diameter. */
  relativeRoughness: number;
}
