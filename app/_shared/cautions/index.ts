export { Cautions } from './cautions';
