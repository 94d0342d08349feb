import { loadEnglish } from '../../src/text';

// What is said in a test is said in English.
await loadEnglish();
