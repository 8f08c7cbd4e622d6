// The part of the modelling library that the program uses, without the rest of it.
module.exports = {
  text: { vectorText: require("@jscad/modeling/src/text/vectorText") },
};
