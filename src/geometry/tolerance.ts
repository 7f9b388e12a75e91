/** Two lengths closer than this are the same, in metres: a hundredth of a millimetre, far below any shop's tape. */
export const SAME_LENGTH = 1e-5;

/** Areas smaller than this are nothing, in square metres. */
export const NO_AREA = 1e-8;
