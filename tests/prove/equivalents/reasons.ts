export const atOneValue = 'differs only at one exact value, at which both ways give the same'
