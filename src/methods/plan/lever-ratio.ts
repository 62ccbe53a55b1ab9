// What an adapter makes of a setting: shared by the plan of the passes and by the reading of the record.

/** Setting over torque at the nut, TM 9-254; same relation as wrench-setting. */
export const leverRatio = "wrenchLength / (wrenchLength + adapterLength * cos(adapterAngle))";

/** What the wrench is set to, from the net torque and the run-on of the nut. */
export const setFromNet = "(net + runOn) * leverRatio";

/** The net torque a reading stands for. */
export const netFromRead = "read / leverRatio - runOn";
