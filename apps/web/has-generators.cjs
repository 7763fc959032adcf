// In place of @stdlib/assert-has-generator-support, which finds it out by eval: the content policy allows none, and every browser
// that the build is for has generators.
module.exports = () => true;
